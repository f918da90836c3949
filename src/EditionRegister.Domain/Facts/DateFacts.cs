using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Facts;

/// <summary>Dates are four facts: the text as written, its earliest and latest day, and its EDTF where the text is something else.</summary>
public static class DateFacts
{
    extension(Deed deed)
    {
        /// <summary>Sets a date whose bounds are named after it (year, year_earliest, year_latest).</summary>
        public void SetDate(string table, long id, string fact, RecordedDate date) => deed.SetDate(table, id, fact, fact, date);

        /// <summary>Sets a date whose bounds are named after another word (closed_on, closed_earliest, closed_latest).</summary>
        public void SetDate(string table, long id, string fact, string bounds, RecordedDate date)
        {
            deed.Set(table, id, (fact, date.Text), (bounds + "_earliest", date.EarliestText), (bounds + "_latest", date.LatestText));

            // Most dates are EDTF as they are written. What has none is said to have none only where it may have had one.
            if (date.ReadAs is not null || !deed.IsNew(table, id))
            {
                deed.Set(table, id, (bounds + "_edtf", date.ReadAs));
            }
        }
    }
}
