using EditionRegister.Domain.Reading.Search;

namespace EditionRegister.Store.Lists;

/// <summary>Which impressions to list; what is null or empty does not matter.</summary>
public sealed record ImpressionFilter
{
    /// <summary>
    /// A whole code; or parts, each met by the number, the dates or the techniques read in it, or by its words: found in the title, a maker's name or class
    /// code, the name of the place or of one around it, the code, or (three letters and more) in the year or the technique as written.
    /// </summary>
    public Sought Sought { get; init; } = Sought.Everything;

    /// <summary>By one of these makers.</summary>
    public IReadOnlyList<long>? MakerIds { get; init; }

    public long? WorkId { get; init; }

    public long? EditionId { get; init; }

    /// <summary>Lying in this place, or in one inside it.</summary>
    public long? PlaceId { get; init; }

    /// <summary>pulled, kept, spare, left-out or held-out.</summary>
    public string? Standing { get; init; }
}
