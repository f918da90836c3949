using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Wording;

/// <summary>What is known of one impression, a label before each value; a value that is not known is null.</summary>
public static class ImpressionFacts
{
    public static IReadOnlyList<(string Label, string? Value)> OfTheWork(Work work) =>
    [
        ("Work", $"{Counted.Figure(work.Id)}, {Called.Work(work)}"),
        ("Maker", work.ShownMaker),
        ("Year", work.Year.IsKnown ? work.Year.Text : null),
        ("Technique", work.Technique),
    ];

    /// <param name="work">The work.</param>
    /// <param name="sheet">One of its impressions.</param>
    /// <param name="units">"mm" or "in".</param>
    public static IReadOnlyList<(string Label, string? Value)> OfTheRun(Work work, Impression sheet, string units)
    {
        var run = work.RunOf(sheet);

        return
        [
            ("Print run", run is null ? "unknown" : $"{Counted.Figure(run.Ordinal)} ({run.Purpose}), sheet {Counted.Figure(sheet.Ordinal)} of the pile"),
            ("Printed", run?.Printed.ToString()),
            ("Paper", run?.Paper),
            ("State", run?.State),
            ("Image", SizesShown.Show(run?.ImageHeight, run?.ImageWidth, units)),
            ("Sheet", SizesShown.Show(run?.SheetHeight, run?.SheetWidth, units)),
        ];
    }

    public static IReadOnlyList<(string Label, string? Value)> OfTheSheet(Work work, Impression sheet) =>
    [
        ("Standing", Standing(sheet)),
        ("Number given", Given(work, sheet)),
        ("Pencilled", sheet.Pencilled),
        ("Titled", sheet.Titled),
        ("Signed", sheet.Signature is { } signature ? $"{sheet.Signed}, “{signature}”" : sheet.Signed),
        ("Condition", sheet.Condition),
        ("For sale", Called.Plain(sheet.ForSale)),
        ("Asking price", PricesShown.Show(sheet.Asking, sheet.AskingCurrency)),
        ("Where", WhereInWords.Of(work, sheet)),
        ("Whose", WhereInWords.OwnerOf(work, sheet)),
        ("Reserved", MovesSaid.ReservedOf(sheet.StandingReservation, work.Book)),
        ("Answers for it", AnswersFor(work, sheet)),
        ("Note", sheet.Note),
    ];

    /// <summary>The consignee, where it was passed on since; else whoever has it answers for it, and that is said already.</summary>
    private static string? AnswersFor(Work work, Impression sheet) => Consignments.HandsOf(work, sheet) is [var first, _, ..] hands
        ? $"{WhereInWords.PersonNamed(first, work.Book)}, who passed it on to {string.Join(", then ", hands.Skip(1).Select(hand => WhereInWords.PersonNamed(hand, work.Book)))}"
        : null;

    private static string Standing(Impression sheet)
    {
        var fault = sheet.Fault is null ? null : Fault.Of(sheet.Fault)?.Name ?? sheet.Fault;

        return string.Join(", ", new[] { Called.Plain(sheet.Standing), fault, sheet.FaultNote }.OfType<string>());
    }

    private static string Given(Work work, Impression sheet) =>
        work.EditionOf(sheet) is { } edition && work.NumberingOf(sheet) is { } numbering
            ? $"{numbering.Spell(sheet.Number) ?? "number unknown"}, {numbering.Kind?.Name ?? numbering.KindWord}, edition {Counted.Figure(edition.Id)}{Extent(edition)}"
            : "none";

    private static string Extent(Edition edition) => edition.IsWhole ? "" : $" ({Called.Extent(edition.Extent)})";
}
