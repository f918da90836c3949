namespace EditionRegister.UseCases.Choosing;

/// <summary>Which impressions a deed is about, as a person names them.</summary>
public sealed record ImpressionChoice
{
    /// <summary>"3-7, 9, A/P I-III, 7KQ4-M2X3": numbers need <see cref="Edition"/>, codes need nothing.</summary>
    public string? Sheets { get; init; }

    public long? Edition { get; init; }

    /// <summary>The work whose pile is meant, with <see cref="Pile"/>.</summary>
    public long? Work { get; init; }

    /// <summary>The print run of that work, 1 when not said.</summary>
    public int Run { get; init; } = 1;

    /// <summary>Places in the pile of a print run: "1-14, 17".</summary>
    public string? Pile { get; init; }

    /// <summary>Everything that lies in a place, or in a place inside it.</summary>
    public string? LyingIn { get; init; }

    /// <summary>Everything listed in this show.</summary>
    public long? Show { get; init; }

    /// <summary>Every impression that is not left out.</summary>
    public bool All { get; init; }

    /// <summary>Whether what lies in the copies of a set goes with them; null leaves it to the custom of the deed: they go where it is moved or passes on.</summary>
    public bool? WithSets { get; init; }

    public static ImpressionChoice OfCode(string code) => new() { Sheets = code };
}
