namespace EditionRegister.Domain.Reading.Inscriptions.Proofs;

internal enum Certainty : byte
{
    /// <summary>It says what it says.</summary>
    Sure,

    /// <summary>With a number beside it, it is a proof's mark; without one it may be, and nothing is guessed.</summary>
    Doubtful,

    /// <summary>With a number beside it, it is a proof's mark; without one nobody would think so.</summary>
    Silent,
}

/// <summary>A kind of proof met in a text: its word, where it stands, and how sure it is.</summary>
internal readonly record struct SeriesMet(string Series, int Start, int Next, Certainty Certainty = Certainty.Sure)
{
    /// <summary>In the plural, as proofs are counted.</summary>
    public bool IsPlural { get; init; }

    public bool IsSure => Certainty == Certainty.Sure;
}
