namespace EditionRegister.Store.Lists;

/// <summary>Which impressions to list; what is null or empty does not matter.</summary>
public sealed record ImpressionFilter
{
    /// <summary>A whole code; or words, each found in the title, a maker's name or class code, the name of the place or of one around it, or in the code.</summary>
    public string? Text { get; init; }

    /// <summary>Found as <see cref="Text"/> is, but each as it stands, blanks and all.</summary>
    public IReadOnlyList<string> Phrases { get; init; } = [];

    /// <summary>By one of these makers.</summary>
    public IReadOnlyList<long>? MakerIds { get; init; }

    public long? WorkId { get; init; }

    public long? EditionId { get; init; }

    /// <summary>Lying in this place, or in one inside it.</summary>
    public long? PlaceId { get; init; }

    /// <summary>pulled, kept, spare, left-out or held-out.</summary>
    public string? Standing { get; init; }
}
