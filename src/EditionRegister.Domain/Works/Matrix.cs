using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Works;

/// <summary>Block, plate, stone, screen or stencil that a work is printed from, with what became of it.</summary>
public sealed record Matrix(
    long Id,
    long V,
    string What,
    string? Material,
    string Reduction,
    RecordedDate Made,
    string Fate,
    RecordedDate FateDate,
    string? FateNote)
{
    public bool IsReduction => Reduction == "yes";

    /// <summary>What the trade calls it: a block, a plate; "matrix" only where it is none of these.</summary>
    public string Called => What is "other" or "" ? "matrix" : What;
}
