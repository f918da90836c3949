using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Wording;

/// <summary>What sentences call a matrix: what it is, and its number.</summary>
public static class MatrixText
{
    /// <summary>Block 2 of “Harbour”, block 3 (sky) of “Harbour”. Begins a sentence.</summary>
    public static string Of(Work work, Matrix matrix) => $"{Alone(matrix)} of {Called.Work(work)}";

    /// <summary>Block 3 (sky), where the work is said beside it.</summary>
    public static string Alone(Matrix matrix) =>
        $"{char.ToUpperInvariant(matrix.Called[0])}{matrix.Called[1..]} {Counted.Figure(matrix.Id)}{(matrix.Part is { } part ? $" ({part})" : "")}";

    /// <summary>key block; block 2 where its part is not said. For lists.</summary>
    public static string Short(Matrix matrix) =>
        matrix.Part is not { } part ? $"{matrix.Called} {Counted.Figure(matrix.Id)}" : part.EndsWith(matrix.Called, StringComparison.OrdinalIgnoreCase) ? part : $"{part} {matrix.Called}";
}
