namespace EditionRegister.Domain.Sets;

/// <summary>A work of parts. Its own impressions are the copies: each stands for one set and bears the set's number on its colophon.</summary>
/// <param name="Id">Its row.</param>
/// <param name="V">The entry that last wrote it.</param>
/// <param name="Form">portfolio, suite, folded-book, bound-book or exchange.</param>
/// <param name="SignedOn">colophon, sheets, both or unknown.</param>
/// <param name="Note">As written.</param>
/// <param name="Parts">The works it is made of, in order.</param>
public sealed record PrintSet(long Id, long V, string Form, string SignedOn, string? Note, IReadOnlyList<SetPart> Parts);

/// <summary>One part of a set: a work of its own.</summary>
/// <param name="Id">Its row.</param>
/// <param name="Ordinal">Its place in the set, from one.</param>
/// <param name="Work">The part.</param>
/// <param name="Title">As lists show it.</param>
public sealed record SetPart(long Id, int Ordinal, long Work, string Title);

/// <summary>A sheet that lies in one copy of a set, with what must be known of it without reading its work.</summary>
/// <param name="Id">Its row.</param>
/// <param name="Sheet">The impression.</param>
/// <param name="Work">The work it is of.</param>
/// <param name="Code">As stored.</param>
/// <param name="Number">As its own work would say it.</param>
/// <param name="Standing">in or taken-out.</param>
/// <param name="Where">Where the sheet itself is by now, or null.</param>
/// <param name="Whose">Whose the sheet itself is by now, or null.</param>
public sealed record SetSheet(
    long Id, long Sheet, long Work, string Code, string Number, string Standing, Chains.Position? Where, Chains.Owner? Whose)
{
    public bool IsIn => Standing == "in";

    /// <summary>The kind of its number, by the kind's word; null where it has none.</summary>
    public string? KindWord { get; init; }

    /// <summary>Its place in that numbering, or null.</summary>
    public int? Ordinal { get; init; }

    /// <summary>It changed hands since it was made.</summary>
    public bool HasPassedOn { get; init; }

    /// <summary>The code as people see it; as found where damage made it no code.</summary>
    public string ShownCode => Codes.RegisterCode.TryParse(Code, out var code) ? code.ToString() : Code;

    /// <summary>False only where both have a number, and it is another.</summary>
    public bool IsNumberedAs(string? kindWord, int? number) => Ordinal is null || number is null || (KindWord == kindWord && Ordinal == number);
}

/// <summary>The set a sheet lies in: the work of parts, and the copy by its code.</summary>
public sealed record SetMembership(long SetWork, string SetTitle, long Copy, string CopyCode, string CopyNumber)
{
    /// <summary>The copy's code as people see it; as found where damage made it no code.</summary>
    public string ShownCopyCode => Codes.RegisterCode.TryParse(CopyCode, out var code) ? code.ToString() : CopyCode;
}
