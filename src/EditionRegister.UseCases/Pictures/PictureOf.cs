using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Pictures;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Pictures;

/// <summary>What a picture shows, as a person names it; several go together where they are of one work.</summary>
/// <param name="Sheet">A sheet's code.</param>
/// <param name="Edition">The edition it stands for.</param>
/// <param name="Matrix">A block or plate.</param>
public sealed record PictureOf(string? Sheet = null, long? Edition = null, long? Matrix = null)
{
    /// <exception cref="Domain.RefusedException">code-misread, code-not-found, edition-not-found, matrix-not-found, picture-of-two-works or picture-of-nothing.</exception>
    internal (Work Work, PictureSubject Subject) Find(Reader reader)
    {
        var sheet = Sheet is { } code ? FindSheet(reader, code) : null;
        var edition = Edition is { } id ? reader.EditionOrRefuse(id) : ((Work Work, Edition Edition)?)null;
        var ofMatrix = Matrix is { } matrix ? reader.MatrixsWork(matrix) ?? throw WorkRefusals.NoMatrix(matrix) : (long?)null;
        var work = reader.WorkOrRefuse(sheet?.Work ?? edition?.Work.Id ?? ofMatrix ?? throw PictureRefusals.NoSubject());

        if (edition is { } stood && stood.Work.Id != work.Id)
        {
            throw PictureRefusals.OfAnotherWork("edition", work);
        }

        if (ofMatrix is { } other && other != work.Id)
        {
            throw PictureRefusals.OfAnotherWork("block or plate", work);
        }

        return (work, new PictureSubject(sheet?.Impression, Edition, Matrix));
    }

    private static (long Work, long Impression)? FindSheet(Reader reader, string code)
    {
        var read = RegisterCode.TryParse(code, out var parsed) ? parsed : throw ImpressionRefusals.NotACode(code);

        return reader.FindCode(read.Text) ?? throw ImpressionRefusals.NoSuchCode(read.ToString());
    }
}
