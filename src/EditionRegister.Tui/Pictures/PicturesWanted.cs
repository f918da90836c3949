using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Pictures;

namespace EditionRegister.Tui.Pictures;

/// <summary>Whose pictures a page lists: a whole work's, and which of its things a new one is added to.</summary>
internal sealed record PicturesWanted(long Work, string? Sheet = null, long? Edition = null, long? Matrix = null)
{
    public PictureOf Of => new(Sheet, Edition, Matrix);

    public bool IsOfOneThing => (Sheet, Edition, Matrix) != (null, null, null);

    /// <summary>What a new picture is of, in words; null where that is to be asked.</summary>
    public string? Called(Work work) =>
        Sheet is { } code ? work.Impressions.FirstOrDefault(sheet => sheet.ShownCode == code) is { } found ? $"{code}, {work.NumberOf(found)}" : code
        : Matrix is { } id && work.Matrices.FirstOrDefault(matrix => matrix.Id == id) is { } matrix ? MatrixText.Of(work, matrix)
        : Edition is { } edition ? $"edition {Counted.Figure(edition)}"
        : null;
}
