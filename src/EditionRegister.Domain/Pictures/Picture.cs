using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Pictures;

/// <summary>A picture on record: its file lies in the register's images folder under the SHA-256 of its bytes.</summary>
public sealed record Picture
{
    public required long Id { get; init; }

    public required long V { get; init; }

    public required int Ordinal { get; init; }

    /// <summary>The sheet it shows, or null.</summary>
    public long? Impression { get; init; }

    /// <summary>The edition it stands for, or null.</summary>
    public long? Edition { get; init; }

    /// <summary>The block or plate it shows, or null.</summary>
    public long? Matrix { get; init; }

    /// <summary>Lower-case hex.</summary>
    public required string Sha256 { get; init; }

    public required string Media { get; init; }

    public required long Bytes { get; init; }

    /// <summary>Pixels.</summary>
    public required int Width { get; init; }

    /// <summary>Pixels.</summary>
    public required int Height { get; init; }

    public string? FileName { get; init; }

    public string? Caption { get; init; }

    public string? Credit { get; init; }

    public required RecordedDate Taken { get; init; }

    /// <summary>shown or taken-off.</summary>
    public required string Standing { get; init; }

    public bool IsShown => Standing == "shown";
}
