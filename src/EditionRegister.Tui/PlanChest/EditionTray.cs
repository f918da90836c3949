using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.PlanChest;

/// <summary>One cell of the tray: its place counted through the whole of it, the numbering it belongs to, or none, what is in it, and what was found about that.</summary>
internal sealed record TraySlot(int At, Numbering? Numbering, MapCell Cell, IReadOnlyList<Finding> Findings)
{
    /// <summary>The code of its sheet as people see it, or null where it has none.</summary>
    public string? Code => Cell.Sheet?.ShownCode;

    /// <summary>The number as people type it: 11, A/P II, B.A.T.; null for what has none.</summary>
    public string? Typed => Numbering is { } numbering && Cell.Ordinal is { } ordinal ? numbering.Typed(ordinal) : null;

    /// <summary>Short: what is the same for all cells of a numbering stands in its heading.</summary>
    public string Label => Numbering is null ? Code!
        : Numbering.Notation is { } notation && notation != Notation.None && Cell.Ordinal is { } ordinal && ordinal >= 1 && ordinal <= notation.Largest ? notation.Write(ordinal)
        : Cell.Spelled;
}

/// <summary>The cells of an edition laid out: numbering by numbering, then the sheets beside the numbers by their standing.</summary>
internal sealed class EditionTray
{
    private readonly List<(string Heading, List<TraySlot> Slots)> _groups = [];

    public EditionTray(EditionSeen seen)
    {
        foreach (var numbering in seen.Map.Numberings)
        {
            var sign = EditionFindings.Sign(seen.Of(numbering.Numbering));
            Add($"{(sign == ' ' ? "" : $"{sign} ")}{Heading(numbering)}", numbering.Numbering, numbering.Cells, seen);
        }

        foreach (var standing in seen.Map.Beside.GroupBy(cell => cell.Spelled))
        {
            Add($"beside the numbers: {standing.Key}", null, standing, seen);
        }

        Slots = [.. _groups.SelectMany(group => group.Slots)];
    }

    public IReadOnlyList<TraySlot> Slots { get; }

    public IReadOnlyList<TrayGroup> Groups(MarkedSheets marked) =>
        [.. _groups.Select(group => new TrayGroup(group.Heading, [.. group.Slots.Select(slot => Drawn(slot, marked))]))];

    /// <summary>Where a slot that was there before is now, or null.</summary>
    public int? Find(TraySlot? before)
    {
        for (var at = 0; before is not null && at < Slots.Count; at++)
        {
            if (Slots[at].Code == before.Code && Slots[at].Numbering?.Id == before.Numbering?.Id && Slots[at].Cell.Ordinal == before.Cell.Ordinal)
            {
                return at;
            }
        }

        return null;
    }

    /// <summary>The first slot of a number that is looked for: the number itself, else a sheet that says it has it; null where there is none.</summary>
    public int? Find(SoughtNumber number, Work work) =>
        (Slots.FirstOrDefault(slot => slot is { Numbering: { } numbering, Cell.Ordinal: { } ordinal } && number.Fits(numbering, ordinal))
            ?? Slots.FirstOrDefault(slot => slot.Cell.Sheet is { } sheet && number.Fits(work, sheet)))?.At;

    private void Add(string heading, Numbering? numbering, IEnumerable<MapCell> cells, EditionSeen seen)
    {
        var first = _groups.Sum(group => group.Slots.Count);
        _groups.Add((heading, [.. cells.Select((cell, at) => new TraySlot(first + at, numbering, cell, seen.Of(cell.Sheet)))]));
    }

    // A numbering without a size is called by its kind in its span already.
    private static string Heading(MapNumbering numbering) =>
        numbering.Span.StartsWith(numbering.Heading, StringComparison.Ordinal) ? numbering.Span : $"{numbering.Heading}, {numbering.Span}";

    private static TrayCell Drawn(TraySlot slot, MarkedSheets marked) => new(
        slot.Label,
        slot.Cell.Letter,
        EditionFindings.Sign(slot.Findings),
        slot.Code is { } code && marked.Holds(code),
        slot.Findings.Count > 0 ? EditionFindings.Tone(slot.Findings.Max(finding => finding.Severity)) : slot.Cell.Sheet is null ? Tone.Quiet : Tone.Plain);
}
