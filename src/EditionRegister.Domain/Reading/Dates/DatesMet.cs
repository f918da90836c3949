using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Of all the dates met in a text, the one that counts, and the others beside it.</summary>
internal static class DatesMet
{
    /// <summary>Null where the text has no date and does not say so.</summary>
    public static ReadDate? In(TokenText text)
    {
        Clauses said = new(text);

        return said.Own.Count > 0 ? OfTheThing(said)
            : said.InBrackets.Count > 0 ? ReadDate.Of(null, DatesTogether.OfPeriods(said.InBrackets), Events(said))
            : UndatedWords.Begin(text) ? ReadDate.Undated(Events(said))
            : OfWhatHappened(said);
    }

    /// <summary>A date in brackets narrows the thing's own where they meet, as a period does; else it stands beside it.</summary>
    private static ReadDate OfTheThing(Clauses said)
    {
        var date = DatesTogether.Listed(said.Own);
        List<DatedEvent> beside = [];

        foreach (var bracketed in said.InBrackets)
        {
            if (DatesTogether.Narrowed(date, bracketed) is { } both)
            {
                date = both;
            }
            else
            {
                beside.Add(DatedEvent.Of("in brackets", bracketed));
            }
        }

        return ReadDate.Of(null, date, [.. beside, .. Events(said)]);
    }

    /// <summary>Negative 1950, printed 1981: what made the image comes before what was made of it, else the first that is said.</summary>
    private static ReadDate? OfWhatHappened(Clauses said)
    {
        var dated = said.Happenings.Where(one => one is { IsOfAnother: false, Dates.Count: > 0 }).ToList();
        var main = dated.Find(one => one.IsOfImage) ?? dated.FirstOrDefault();

        return main is not null ? ReadDate.Of(main.Word, DatesTogether.Listed(main.Dates), Events(said, main))
            : said.Happenings.Exists(one => one.Dates.Count > 0) ? ReadDate.WithoutItsOwn(Events(said))
            : said.Elsewhere.Count > 0 ? ReadDate.Of(null, DatesTogether.Listed(said.Elsewhere), [])
            : null;
    }

    private static List<DatedEvent> Events(Clauses said, Happening? but = null) => [.. said.Happenings.Where(one => one != but).Select(one => one.Event).OfType<DatedEvent>()];
}
