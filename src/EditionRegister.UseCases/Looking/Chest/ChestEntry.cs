using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Reading.Search;

namespace EditionRegister.UseCases.Looking;

/// <summary>A line of the chest with what it is sorted by, and everything it is found by.</summary>
internal sealed record ChestEntry(ChestLine Line, ChestKey Key, Edition? Edition, long[] MakerIds)
{
    /// <summary>Folded: title, makers and their class codes, each followed by a line feed.</summary>
    public required string Text { get; init; }

    /// <summary>Folded: the year and the technique as written, each followed by a line feed.</summary>
    public string Said { get; init; } = "";

    /// <summary>The techniques of its work, by their words.</summary>
    public IReadOnlyList<string> Techniques { get; init; } = [];

    /// <summary>The year of its work, when it was declared, and when its sheets were printed; each where it is known.</summary>
    public DaysThere[] Days { get; init; } = [];

    /// <summary>The numbers of its numberings, and those that its sheets say they have where that is something else.</summary>
    public NumbersThere[] Numbers { get; init; } = [];

    /// <summary>The codes of its sheets, each followed by a line feed.</summary>
    public byte[] Codes { get; init; } = [];

    /// <summary>Where its sheets lie, each place once.</summary>
    public long[] Places { get; init; } = [];

    /// <summary>Who owns or has its sheets, each once.</summary>
    public long[] People { get; init; } = [];
}

/// <summary>By maker, title and edition; what nobody knows comes last. The names are folded.</summary>
internal sealed record ChestKey(string? Maker, string? Title, long Work, int Edition, long EditionId) : IComparable<ChestKey>
{
    public int CompareTo(ChestKey? other) =>
        other is null ? 1
        : Compare(Maker, other.Maker) is not 0 and var byMaker ? byMaker
        : Compare(Title, other.Title) is not 0 and var byTitle ? byTitle
        : Work != other.Work ? Work.CompareTo(other.Work)
        : Edition != other.Edition ? Edition.CompareTo(other.Edition)
        : EditionId.CompareTo(other.EditionId);

    private static int Compare(string? left, string? right) =>
        left is null || right is null ? (left is null).CompareTo(right is null) : string.CompareOrdinal(left, right);
}
