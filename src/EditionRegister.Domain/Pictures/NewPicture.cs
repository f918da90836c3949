using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Pictures;

/// <summary>What a picture shows; an edition is stood for, so a sheet's picture may stand for its edition too.</summary>
/// <param name="Impression">The sheet, or null.</param>
/// <param name="Edition">The edition it stands for, or null.</param>
/// <param name="Matrix">The block or plate, or null.</param>
public sealed record PictureSubject(long? Impression = null, long? Edition = null, long? Matrix = null);

/// <summary>A picture as it is taken in.</summary>
public sealed record NewPicture
{
    public required PictureSubject Subject { get; init; }

    /// <summary>Lower-case hex.</summary>
    public required string Sha256 { get; init; }

    public required string Media { get; init; }

    public required long Bytes { get; init; }

    /// <summary>Pixels.</summary>
    public required int Width { get; init; }

    /// <summary>Pixels.</summary>
    public required int Height { get; init; }

    public required string FileName { get; init; }

    public string? Caption { get; init; }

    public string? Credit { get; init; }

    public RecordedDate Taken { get; init; } = RecordedDate.None;
}
