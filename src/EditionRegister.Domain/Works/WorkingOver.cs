using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;

namespace EditionRegister.Domain.Works;

/// <summary>
/// A sheet left out that was worked over by hand into a unique work of its own. The sheet keeps its code and its row among the sheets left out of
/// the old work, and its chain ends there: worked over by hand, gone. The new work has a print run of one sheet and a unique edition of one, and
/// that sheet has a code of its own, whose chain begins where the old one ended and belongs to whom it belonged. So one paper is never told by two rows.
/// </summary>
public sealed record WorkingOver
{
    private const string ByHand = "worked over by hand";

    public string? Title { get; init; }

    public bool Untitled { get; init; }

    /// <summary>Null is that of the old work, and that it was worked over by hand.</summary>
    public string? Technique { get; init; }

    /// <summary>None are those of the old work.</summary>
    public IReadOnlyList<long> Makers { get; init; } = [];

    public RecordedDate Date { get; init; } = RecordedDate.None;

    public string? Note { get; init; }

    /// <summary>Answers the id of the new sheet.</summary>
    /// <param name="old">The work it was printed as.</param>
    /// <param name="sheet">One of its sheets.</param>
    /// <param name="code">A code never given before.</param>
    /// <param name="onOld">Where the facts of the old work go.</param>
    /// <param name="work">The id of the new work.</param>
    /// <param name="onNew">Where the facts of the new work go.</param>
    /// <exception cref="RefusedException">One of <see cref="WorkingOverRefusals"/>, title-missing or a date that runs backwards.</exception>
    public long Record(Work old, Impression sheet, RegisterCode code, Deed onOld, long work, Deed onNew)
    {
        ArgumentNullException.ThrowIfNull(old);
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(onOld);
        ArgumentNullException.ThrowIfNull(onNew);

        Possible(old, sheet);
        var makers = Makers.Count > 0 ? Makers : [.. old.Makers.Select(maker => maker.Id)];
        NewWork made = new()
        {
            Title = Title, Untitled = Untitled, Makers = makers, MakerUnknown = makers.Count == 0, Year = Year(),
            Technique = Technique ?? (old.Technique is { } printed ? $"{printed}, {ByHand}" : ByHand), Note = Note,
        };
        made.Record(work, old.OwnWords, onNew);
        onNew.Set("work", work, ("worked_over", sheet.Id));

        var (where, whose) = (sheet.Where ?? Position.Unknown, sheet.Whose ?? Owner.Unknown);
        ChainFacts.Move(sheet.Id, sheet.Whereabouts.Count + 1, MoveKind.WorkedOver, where, Position.Gone, Date, onOld);

        return Sheet(old, sheet, code, work, where, whose, onNew);
    }

    private long Sheet(Work old, Impression sheet, RegisterCode code, long work, Position where, Owner whose, Deed deed)
    {
        var printed = old.RunOf(sheet);
        var run = deed.NewId("print_run");
        deed.Set("print_run", run,
            ("work", work), ("ordinal", 1), ("purpose", "unknown"),
            ("image_height", printed?.ImageHeight), ("image_width", printed?.ImageWidth), ("sheet_height", printed?.SheetHeight), ("sheet_width", printed?.SheetWidth));
        deed.SetPaper(run, printed?.Paper);
        deed.SetWrittenSizes(run, printed?.ImageWritten, printed?.SheetWritten);
        deed.SetDate("print_run", run, "printed", printed?.Printed ?? RecordedDate.None);
        var impression = new NewSheet(run, 1, code, "kept") { FirstMove = MoveKind.WorkedOver }.Record(where, whose, Date, deed);

        var edition = deed.NewId("edition");
        deed.Set("edition", edition, ("work", work), ("ordinal", 1), ("kind", "unique"), ("extent", "whole"), ("closed", "no"));
        deed.SetDate("edition", edition, "declared", Date);
        NumberingPlan one = new(NumberingKind.Numbered, Notation.Arabic, 1, "stated");
        deed.Set("impression", impression, ("numbering", NewEdition.AddNumbering(edition, 1, one, "whole", deed)), ("number", 1));

        return impression;
    }

    private void Possible(Work old, Impression sheet)
    {
        if (sheet.WorkedInto is { } into)
        {
            throw WorkingOverRefusals.Already(sheet, into);
        }

        if (sheet.Standing != "left-out" || sheet.Number is not null)
        {
            throw WorkingOverRefusals.NotLeftOut(old, sheet);
        }

        if (sheet.Whose is { State: "known", Person: { } owner } && old.Makers.Any() && old.Makers.All(maker => maker.Id != owner))
        {
            throw WorkingOverRefusals.NotTheMakers(old, sheet);
        }

        if (sheet.Where is { State: "gone" } || (sheet.Where is { State: "with", Holder: { } holder } && old.Makers.All(maker => maker.Id != holder)))
        {
            throw WorkingOverRefusals.NotHere(old, sheet);
        }

        ChainDates.RunForwards(old, sheet, Date, sheet.Whereabouts.Select(link => (link.Kind, link.Moved)));
    }

    /// <summary>The year in which it was worked over, where the date lies in one.</summary>
    private RecordedDate Year() => Date is { Earliest.Year: var from, Latest.Year: var to } && from == to
        ? RecordedDate.Read(from.ToString("0000", System.Globalization.CultureInfo.InvariantCulture))
        : RecordedDate.None;
}
