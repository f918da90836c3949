using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Domain.Works;

/// <summary>What is put right about a matrix, or where it now lies; null leaves a fact as it is.</summary>
public sealed record MatrixCorrection
{
    /// <summary>One of <see cref="MatrixDeeds.Kinds"/>.</summary>
    public string? What { get; init; }

    public string? Part { get; init; }

    public string? Material { get; init; }

    /// <summary>yes, no or unknown.</summary>
    public string? Reduction { get; init; }

    public RecordedDate? Made { get; init; }

    public long? Place { get; init; }

    public long? Keeper { get; init; }

    /// <exception cref="RefusedException">fate-needs-reduction: it is recorded as cut away in printing.</exception>
    public void Record(Matrix matrix, Deed deed)
    {
        if (Reduction is not (null or "yes") && matrix.Fate == "cut-away-in-printing")
        {
            throw WorkRefusals.CutAwayNeedsReduction(matrix);
        }

        foreach (var (fact, value) in Changes().Where(change => change.Fact != "made"))
        {
            deed.Set("matrix", matrix.Id, (fact, value));
        }

        if (Made is not null)
        {
            deed.SetDate("matrix", matrix.Id, "made", Made);
        }
    }

    /// <summary>The facts that are put right, with what they are to be; a date as it is written.</summary>
    public IEnumerable<(string Fact, FactValue Value)> Changes() => new (string Fact, FactValue Value)[]
    {
        ("what", What), ("part", Part), ("material", Material), ("reduction", Reduction), ("made", Made?.Text), ("place", Place), ("keeper", Keeper),
    }.Where(change => !change.Value.IsNull);
}
