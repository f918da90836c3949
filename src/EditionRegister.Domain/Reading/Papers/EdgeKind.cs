namespace EditionRegister.Domain.Reading.Papers;

/// <summary>How an edge of a sheet came to be.</summary>
public enum EdgeKind
{
    /// <summary>As it came from the mould.</summary>
    Deckle,

    /// <summary>Cut or trimmed.</summary>
    Cut,

    /// <summary>Torn by hand.</summary>
    Torn,
}
