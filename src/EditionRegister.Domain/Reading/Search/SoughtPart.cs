using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Domain.Reading.Search;

/// <summary>
/// One of the things asked for. It is met by whatever was read in it, or by its words as they stand: a print may be called 3/12, or Spring 2024.
/// </summary>
/// <param name="Written">As typed, with single blanks.</param>
/// <param name="Words">The texts that must all be found where it is looked for as words.</param>
public sealed record SoughtPart(string Written, IReadOnlyList<string> Words)
{
    public SoughtNumber? Number { get; init; }

    public SoughtDates? Dates { get; init; }

    /// <summary>All of them are meant; none where no technique was read.</summary>
    public IReadOnlyList<Technique> Techniques { get; init; } = [];

    /// <summary>It was read otherwise than as words.</summary>
    public bool IsRead => Number is not null || Dates is not null || Techniques.Count > 0;

    /// <summary>What was understood, in few words; empty for plain words.</summary>
    public string Meaning => string.Join(" or ", new[] { Number?.ToString(), Dates?.ToString(), TechniquesInWords() }.OfType<string>());

    /// <summary>A technique whose word ends with another's is one of its kind: a reduction linocut is a linocut, a soft-ground etching an etching.</summary>
    /// <param name="technique">By its word.</param>
    /// <param name="asked">What is asked for.</param>
    public static bool IsOfKind(string technique, Technique asked)
    {
        ArgumentNullException.ThrowIfNull(technique);
        ArgumentNullException.ThrowIfNull(asked);

        return technique.EndsWith(asked.Word, StringComparison.Ordinal);
    }

    /// <summary>Whether a work in these techniques, by their words, is asked for.</summary>
    public bool MeansTechniques(IReadOnlyCollection<string> techniques) =>
        Techniques.Count > 0 && Techniques.All(asked => techniques.Any(technique => IsOfKind(technique, asked)));

    public bool Equals(SoughtPart? other) =>
        other is not null && Written == other.Written && Words.SequenceEqual(other.Words) && Number == other.Number && Dates == other.Dates && Techniques.SequenceEqual(other.Techniques);

    public override int GetHashCode() => HashCode.Combine(Written, Number, Dates);

    private string? TechniquesInWords() =>
        Techniques.Count == 0 ? null : $"the {(Techniques.Count == 1 ? "technique" : "techniques")} {string.Join(" and ", Techniques.Select(technique => technique.Name))}";
}
