using System.Globalization;
using EditionRegister.Domain.Codes;
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
    /// <summary>Which part of the image it prints: key, sky, left half.</summary>
    public string? Part { get; init; }

    /// <summary>Its own code, eight characters as stored, or null where it has none yet.</summary>
    public string? Code { get; init; }

    /// <summary>Where it lies, or null where nobody said.</summary>
    public long? Place { get; init; }

    /// <summary>Who has it, or null where it is the maker or nobody said.</summary>
    public long? Keeper { get; init; }

    /// <summary>The impression that proves its fate: the cancellation proof.</summary>
    public long? FateProof { get; init; }

    public IReadOnlyList<MatrixState> States { get; init; } = [];

    public bool IsReduction => Reduction == "yes";

    /// <summary>The code as people see it, or null where it has none yet; as found where damage made it no code.</summary>
    public string? ShownCode => RegisterCode.TryParse(Code, out var code) ? code.ToString() : Code;

    /// <summary>The state it is in: the last one recorded, or null.</summary>
    public MatrixState? NewestState => States.Count == 0 ? null : States[^1];

    /// <summary>What the trade calls it: a block, a plate; "matrix" only where it is none of these.</summary>
    public string Called => What is "other" or "" ? "matrix" : What;

    /// <summary>The key block, block 5: by its part where that is said. For the middle of a sentence.</summary>
    public string CalledPart => Part is { } part ? (part.EndsWith(Called, StringComparison.OrdinalIgnoreCase) ? $"the {part}" : $"the {part} {Called}") : string.Create(CultureInfo.InvariantCulture, $"{Called} {Id}");
}
