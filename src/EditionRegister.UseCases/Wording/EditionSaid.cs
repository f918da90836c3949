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

    /// <summary>Edition 3 of “Harbour” fell short: its size is set anew to 10; pencil 8 sheets anew.</summary>
    public static string Short(Work work, Edition edition, FellShort fell)
    {
        ArgumentNullException.ThrowIfNull(fell);

        return fell.Word == "reset"
            ? $"{Called.Edition(work, edition)} fell short: its size is set anew, {Called.Spans(edition)}.{(fell.ToPencilAnew.Count > 0 ? $" The record of the pencil is cleared on {Counted.Sheets(fell.ToPencilAnew.Count)}: pencil {(fell.ToPencilAnew.Count == 1 ? "it" : "them")} anew." : "")}"
            : $"{Called.Edition(work, edition)} fell short: {Counted.Of(fell.NeverPrinted, "number")} never printed, and that is disclosed.";
    }

    /// <param name="work">The work.</param>
    /// <param name="edition">The edition.</param>
    /// <param name="numbers">How many.</param>
    /// <param name="person">Who is to have them; null takes it back.</param>
    public static string Divided(Work work, Edition edition, int numbers, string? person) =>
        $"{Called.Edition(work, edition)}: {Counted.Of(numbers, "number")} {(person is null ? "divided no more" : $"to go to {person}")}.";

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
