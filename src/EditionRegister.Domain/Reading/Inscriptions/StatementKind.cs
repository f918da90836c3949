namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>What kind of thing a text says of a sheet's place in its edition.</summary>
public enum StatementKind
{
    /// <summary>Nothing of a number, an edition or a state was read, and nothing that could be one was passed over.</summary>
    None,

    /// <summary>A copy of the regular edition.</summary>
    Numbered,

    /// <summary>A proof, with or without a number of its own.</summary>
    Proof,

    /// <summary>A state, and nothing of the edition.</summary>
    State,

    /// <summary>How many there are, without saying which this is.</summary>
    Size,

    /// <summary>Unnumbered, unlimited, open or unique, in words.</summary>
    Open,

    /// <summary>Something that could be read in two ways, or that cannot be true (13/12); nothing is guessed.</summary>
    Declined,
}
