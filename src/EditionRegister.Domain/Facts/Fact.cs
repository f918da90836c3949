namespace EditionRegister.Domain.Facts;

/// <summary>Where a fact's value is kept: in the entry itself, sealed beside it, or nowhere because it is worked out.</summary>
public enum Keeping
{
    Open,
    Sealed,
    Derived,
}

/// <summary>One column of a register table under its permanent name. Names never change; entries of today are replayed in thirty years.</summary>
public sealed record Fact(string Name, bool IsNumber, Keeping Keeping)
{
    /// <summary>For a derived fact: the facts it is worked out from.</summary>
    public IReadOnlyList<string> Sources { get; init; } = [];

    /// <summary>The form of register that first had it, where its table is older; else 1, which says nothing of its own.</summary>
    public int Since { get; init; } = 1;
}
