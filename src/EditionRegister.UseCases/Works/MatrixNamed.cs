using System.Globalization;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Text;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Works;

/// <summary>Finds a matrix of a work by what a person types: its number, its code, or its part of the image.</summary>
internal static class MatrixNamed
{
    /// <exception cref="Domain.RefusedException">matrix-not-found, or matrix-not-named where nothing is said and there are several.</exception>
    public static Matrix Find(Work work, string? named)
    {
        if (named is null)
        {
            return work.Matrices is [var only] ? only : throw WorkRefusals.WhichMatrix(work);
        }

        var id = long.TryParse(named, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
        var code = RegisterCode.TryParse(named, out var read) ? read.Text : "";
        var folded = SearchText.Fold(named.Trim());
        var parts = work.Matrices.Where(matrix => matrix.Part is { } part && SearchText.Fold(part) == folded).ToList();

        return work.Matrices.FirstOrDefault(matrix => matrix.Id == id)
            ?? work.Matrices.FirstOrDefault(matrix => matrix.Code == code)
            ?? (parts is [var one] ? one : throw WorkRefusals.NoSuchPart(work, named));
    }

    /// <exception cref="Domain.RefusedException">state-not-found.</exception>
    public static MatrixState State(Matrix matrix, string name) =>
        matrix.States.FirstOrDefault(state => SearchText.Fold(state.Name) == SearchText.Fold(name)) ?? throw WorkRefusals.NoSuchState(matrix, name);
}
