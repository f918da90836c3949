using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Domain.Works;

/// <summary>A block, plate, stone, screen or stencil as it is first recorded, with a register code of its own.</summary>
public sealed record NewMatrix
{
    /// <summary>One of <see cref="MatrixDeeds.Kinds"/>.</summary>
    public required string What { get; init; }

    /// <summary>Which part of the image it prints, as written: key, sky, left half.</summary>
    public string? Part { get; init; }

    public string? Material { get; init; }

    /// <summary>yes, no or unknown.</summary>
    public string Reduction { get; init; } = "unknown";

    public RecordedDate Made { get; init; } = RecordedDate.None;

    /// <summary>Where it lies; null where nobody said.</summary>
    public long? Place { get; init; }

    /// <summary>Who has it; null where it is the maker or nobody said.</summary>
    public long? Keeper { get; init; }

    public long Record(Work work, RegisterCode code, Deed deed)
    {
        var id = deed.NewId("matrix");
        deed.Set("matrix", id,
            ("work", work.Id), ("what", What), ("material", Material), ("reduction", Reduction), ("fate", "undecided"), ("part", Part), ("place", Place), ("keeper", Keeper));
        deed.SetDate("matrix", id, "made", Made);
        MatrixDeeds.GiveCode(id, code, deed);

        return id;
    }
}
