namespace EditionRegister.Domain.Reading.Lettering;

/// <summary>What a name in a print's lettering is there for. A closed list; the words say no more than the abbreviation does.</summary>
public sealed record LetteringRole
{
    private LetteringRole(string word) => Word = word;

    /// <summary>Drew what was to be engraved: del., gez.</summary>
    public static LetteringRole Drew { get; } = new("drew");

    /// <summary>Devised the image: inv.</summary>
    public static LetteringRole Designed { get; } = new("designed");

    /// <summary>Painted the picture that the print is after: pinx.</summary>
    public static LetteringRole Painted { get; } = new("painted");

    /// <summary>Cut the matrix, by the graver or with acid: sc. says no more than that.</summary>
    public static LetteringRole Engraved { get; } = new("engraved");

    public static LetteringRole Etched { get; } = new("etched");

    public static LetteringRole Aquatinted { get; } = new("aquatinted");

    /// <summary>Made it, and nothing is said of how: fec.</summary>
    public static LetteringRole Made { get; } = new("made");

    /// <summary>Drew on the stone, or issued from it: lith. means either.</summary>
    public static LetteringRole Lithographed { get; } = new("lithographed");

    /// <summary>Published or printed: exc. means either.</summary>
    public static LetteringRole Issued { get; } = new("issued");

    public static LetteringRole Published { get; } = new("published");

    public static LetteringRole Printed { get; } = new("printed");

    /// <summary>Directed the work of others: direx.</summary>
    public static LetteringRole Directed { get; } = new("directed");

    public static IReadOnlyList<LetteringRole> All { get; } = [Drew, Designed, Painted, Engraved, Etched, Aquatinted, Made, Lithographed, Issued, Published, Printed, Directed];

    /// <summary>What the person did, as one would say it: <c>drew</c>, <c>engraved</c>.</summary>
    public string Word { get; }

    public override string ToString() => Word;
}
