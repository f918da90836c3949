using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Passes;

namespace EditionRegister.Domain.Works;

/// <summary>One campaign of pulling sheets. Counts are null where nobody counted; lengths are micrometres.</summary>
public sealed record PrintRun(
    long Id,
    long V,
    int Ordinal,
    string Purpose,
    string? Paper,
    string? State,
    RecordedDate Printed,
    int? Started,
    int? Spoiled,
    int? Unused,
    int? HeldOut,
    long? ImageHeight,
    long? ImageWidth,
    long? SheetHeight,
    long? SheetWidth,
    string? Note)
{
    /// <summary>How many impressions each printed sheet is cut into; null and 1 are the same.</summary>
    public int? CutInto { get; init; }

    /// <summary>How many sheets make one impression, as in a diptych; null and 1 are the same.</summary>
    public int? MadeOf { get; init; }

    /// <summary>From when the sheets on the rack are dry enough to be sorted.</summary>
    public RecordedDate Ready { get; init; } = RecordedDate.None;

    /// <summary>yes, no, unknown, or null where nobody said: printed after the maker's death.</summary>
    public string? Posthumous { get; init; }

    /// <summary>yes, no or null: printed from the cancelled matrix, as evidence.</summary>
    public string? CancellationProof { get; init; }

    public bool IsCancellationProof => CancellationProof == "yes";

    /// <summary>Sheets were started, those spoiled are left to the passes to count, and no pile is laid yet.</summary>
    /// <param name="pile">Impressions of this run on record.</param>
    public bool IsUnderWay(int pile) => pile == 0 && Started is > 0 && Spoiled is null;

    /// <summary>The size of the image as it was written, where it was written otherwise than in millimetres.</summary>
    public string? ImageWritten { get; init; }

    /// <summary>The size of the sheet as it was written, where it was written otherwise than in millimetres.</summary>
    public string? SheetWritten { get; init; }

    /// <summary>What was read of <see cref="Paper"/>; null where nothing was.</summary>
    public PaperOnRecord? PaperRead { get; init; }

    /// <summary>In order; none where they were not recorded.</summary>
    public IReadOnlyList<Pass> Passes { get; init; } = [];
}
