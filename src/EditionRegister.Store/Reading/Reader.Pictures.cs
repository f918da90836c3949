using EditionRegister.Store.Sqlite;

namespace EditionRegister.Store.Reading;

/// <summary>A picture's row as far as its file goes.</summary>
public sealed record PictureOnRecord(long Id, long Work, string Sha256, long Bytes, string? FileName);

public sealed partial class Reader
{
    /// <summary>Every picture on record, taken off or not.</summary>
    public IReadOnlyList<PictureOnRecord> Pictures() => Any("picture")
        ? Rows(
            "SELECT id, work, sha256, bytes, file_name FROM picture ORDER BY id", [],
            row => new PictureOnRecord(row.Figure(0), row.Figure(1), row.Word(2), row.Figure(3), row.TextOrNull(4)))
        : [];

    /// <summary>The work a picture belongs to.</summary>
    public long? PicturesWork(long picture) =>
        Any("picture") ? Rows<long?>("SELECT work FROM picture WHERE id = @1", [picture], row => row.Figure(0)).FirstOrDefault() : null;

    /// <summary>The work a block or plate belongs to.</summary>
    public long? MatrixsWork(long matrix) => Rows<long?>("SELECT work FROM matrix WHERE id = @1", [matrix], row => row.Figure(0)).FirstOrDefault();
}
