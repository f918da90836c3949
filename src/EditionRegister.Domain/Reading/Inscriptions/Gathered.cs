using EditionRegister.Domain.Reading.Inscriptions.Copies;
using EditionRegister.Domain.Reading.Inscriptions.Editions;
using EditionRegister.Domain.Reading.Inscriptions.Proofs;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>A fraction, how it stands, and the mark beside it, if one does.</summary>
internal readonly record struct GatheredFraction(Fraction Fraction, FractionStanding Standing, SeriesMet? Series, bool IsAnnounced)
{
    /// <summary>Where the word stands that announces it, or its own first token.</summary>
    public int From { get; init; } = Fraction.Start;
}

/// <summary>A mark, and the number, letter or size that is its own.</summary>
internal readonly record struct GatheredMark(SeriesMet Series, SizeMet? Own);

/// <summary>Everything that was met in a text, from its first word to its last.</summary>
internal sealed class Gathered
{
    public List<GatheredFraction> Fractions { get; } = [];

    public List<GatheredMark> Marks { get; } = [];

    public List<StateMet> States { get; } = [];

    public List<SizeMet> Sizes { get; } = [];

    public List<StatedProofs> Beside { get; } = [];

    /// <summary>The first token of proofs beside, and the token after the last.</summary>
    public (int Start, int Next) BesideSpan { get; set; } = (int.MaxValue, 0);

    /// <summary>Something that only hints at a proof or a number was met.</summary>
    public bool IsFaint { get; set; }

    public bool IsOutsideEdition { get; set; }
}
