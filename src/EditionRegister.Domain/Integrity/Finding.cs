namespace EditionRegister.Domain.Integrity;

/// <summary>How grave a finding is: worth knowing, worth asking about, or two facts that cannot both be true.</summary>
public enum Severity
{
    Note,
    Query,
    Contradiction,
}

/// <summary>What a finding is about: a kind of thing, its id, and how a person calls it.</summary>
public sealed record Subject(string Kind, long Id, string Name)
{
    public override string ToString() => Name;
}

/// <summary>One thing found: by which rule, how grave, about what, what is so, on what basis, what to do.</summary>
public sealed record Finding(string Rule, Severity Severity, Subject Subject, string Message, string Basis, string Remedy)
{
    /// <summary>What it is called by to accept it; null where it cannot be accepted, as what is found of the file itself.</summary>
    public string? Handle { get; init; }

    /// <summary>That it was accepted with a reason, while that holds; else null.</summary>
    public Acceptance? Accepted { get; init; }
}
