using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Wording;

/// <summary>What is said when something was done to an edition, by commands and rooms alike.</summary>
public static class EditionSaid
{
    /// <summary>Edition 3 of “Harbour” declared: 1/12 to 12/12; A/P I/II to A/P II/II.</summary>
    /// <param name="deed">declared or mended.</param>
    /// <param name="work">The work.</param>
    /// <param name="edition">The edition as it is now.</param>
    public static string Spans(string deed, Work work, Edition edition) => $"{Called.Edition(work, edition)} {deed}: {Called.Spans(edition)}.";

    /// <summary>Edition 3 of “Harbour”: 2 numbers never printed.</summary>
    public static string Fate(Work work, Edition edition, int numbers, string fate) => $"{Called.Edition(work, edition)}: {Counted.Of(numbers, "number")} {Called.Plain(fate)}.";

    public static string Whole(Work work, Edition edition) =>
        $"Edition {Counted.Figure(edition.Id)} of {Called.Work(work)} is whole: every number of it is accounted for or open.";

    public static string Closed(Work work, Edition edition) => $"{Called.Edition(work, edition)} closed on {edition.ClosedOn}: every number is accounted for.";

    public static string NumbersGiven(Work work, Edition edition, int numbers) =>
        $"{Counted.Of(numbers, "number")} of edition {Counted.Figure(edition.Id)} of {Called.Work(work)} given.";

    public static string NumbersTakenBack(int sheets) => $"The number of {Counted.Sheets(sheets)} taken back.";

    /// <summary>2 sheets kept.</summary>
    public static string Sorted(int sheets, string standing) => $"{Counted.Sheets(sheets)} {Called.Plain(standing)}.";

    /// <summary>Edition 3: “Harbour”.</summary>
    public static string MapHeading(NumberMap map) => $"Edition {Counted.Figure(map.Edition.Id)}: {map.Heading}";
}
