using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Facts;

/// <summary>Dates are three facts: the text as written, and its earliest and latest day.</summary>
public static class DateFacts
{
    extension(Deed deed)
    {
        /// <summary>Sets a date whose bounds are named after it (year, year_earliest, year_latest).</summary>
        public void SetDate(string table, long id, string fact, RecordedDate date) => deed.SetDate(table, id, fact, fact, date);

        /// <summary>Sets a date whose bounds are named after another word (closed_on, closed_earliest, closed_latest).</summary>
        public void SetDate(string table, long id, string fact, string bounds, RecordedDate date) => deed.Set(table, id,
            (fact, date.Text), (bounds + "_earliest", date.EarliestText), (bounds + "_latest", date.LatestText));
    }
}
