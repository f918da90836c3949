using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Sizes;
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
        ("Worked over from", WorkedOver(work)),
    ];

    /// <param name="work">The work.</param>
    /// <param name="sheet">One of its impressions.</param>
    /// <param name="sizes">How sizes are written.</param>
    public static IReadOnlyList<(string Label, string? Value)> OfTheRun(Work work, Impression sheet, SizeStyle sizes)
    {
        var run = work.RunOf(sheet);

        return
        [
            ("Print run", run is null ? "unknown" : $"{Counted.Figure(run.Ordinal)} ({run.Purpose}), sheet {Counted.Figure(sheet.Ordinal)} of the pile"),
            ("Printed", run?.Printed.ToString()),
            ("Paper", run?.Paper),
            ("State", run?.State),
            ("Image", SizesShown.Show(run?.ImageHeight, run?.ImageWidth, sizes)),
            ("Sheet", SizesShown.Show(run?.SheetHeight, run?.SheetWidth, sizes)),
        ];
    }

    public static IReadOnlyList<(string Label, string? Value)> OfTheSheet(Work work, Impression sheet) =>
    [
        ("Standing", Standing(work, sheet)),
        ("Grade", GradeShown.Of(sheet.Grade)),
        ("Worked over", sheet.WorkedInto is { } into ? $"into work {Counted.Figure(into.Work)}, “{into.Title}”{(into.Code is { } code ? $" ({Shown(code)})" : "")}" : null),
        ("Number given", Given(work, sheet)),
        .. SheetText.Of(work, sheet).Select(line => (line.Label, (string?)line.Value)),
        ("Pencilled", sheet.Pencilled),
        ("Read as", InscriptionSaid.OfPencil(work, sheet)),
        ("Titled", sheet.Titled),
        ("Signed", sheet.Signature is { } signature ? $"{sheet.Signed}, “{signature}”" : sheet.Signed),
        ("Condition", sheet.Condition),
        ("For sale", Called.Plain(sheet.ForSale)),
        ("Asking price", PricesShown.Show(sheet.Asking, sheet.AskingCurrency)),
        ("Where", WhereInWords.Of(work, sheet)),
        ("Whose", WhereInWords.OwnerOf(work, sheet)),
        ("In a set", SetsSaid.LiesIn(sheet)),
        ("Reserved", MovesSaid.ReservedOf(sheet.StandingReservation, work.Book)),
        ("Answers for it", AnswersFor(work, sheet)),
        ("Note", sheet.Note),
    ];

    /// <summary>The consignee, where it was passed on since; else whoever has it answers for it, and that is said already.</summary>
    private static string? AnswersFor(Work work, Impression sheet) => Consignments.HandsOf(work, sheet) is [var first, _, ..] hands
        ? $"{WhereInWords.PersonNamed(first, work.Book)}, who passed it on to {string.Join(", then ", hands.Skip(1).Select(hand => WhereInWords.PersonNamed(hand, work.Book)))}"
        : null;

    /// <summary>7KQ4-M2X3 of work 3, “Gull Rock”; null where the work is none that came of another.</summary>
    public static string? WorkedOver(Work work) => work.WorkedOver is { } over ? $"{Shown(over.Code)} of work {Counted.Figure(over.Work)}, “{over.Title}”" : null;

    private static string Shown(string code) => RegisterCode.TryParse(code, out var read) ? read.ToString() : code;

    private static string Standing(Work work, Impression sheet)
    {
        var fault = sheet.Fault is null ? null : work.OwnWords.FaultOf(sheet.Fault)?.Name ?? sheet.Fault;

        return string.Join(", ", new[] { Called.Plain(sheet.Standing), fault, sheet.FaultNote, WasSoldAsSecond(sheet) ? "sold as a sheet outside the edition" : null }.OfType<string>());
    }

    private static bool WasSoldAsSecond(Impression sheet) => sheet.Standing == "left-out" && sheet.Ownership.Any(link => link.Kind == MoveKind.Sold.Word);

    private static string Given(Work work, Impression sheet) =>
        work.EditionOf(sheet) is { } edition && work.NumberingOf(sheet) is { } numbering
            ? $"{numbering.Spell(sheet.Number) ?? "number unknown"}, {numbering.Kind?.Name ?? numbering.KindWord}{(numbering.Name is null ? "" : $" ({numbering.Name})")}, edition {Counted.Figure(edition.Id)}{Extent(edition)}"
            : "none";

    private static string Extent(Edition edition) => edition.IsWhole ? "" : $" ({Called.Extent(edition.Extent)})";
}
