using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Wording;

/// <summary>What sentences call a matrix: what it is, and its number.</summary>
public static class MatrixText
{
    /// <summary>Block 2 of “Harbour”. Begins a sentence.</summary>
    public static string Of(Work work, Matrix matrix) =>
        $"{char.ToUpperInvariant(matrix.Called[0])}{matrix.Called[1..]} {Counted.Figure(matrix.Id)} of {Called.Work(work)}";
}
