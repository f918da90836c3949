namespace EditionRegister.Domain.Sizes;

/// <summary>
/// How sizes are written for people: as measured, or rounded in two systems as the rules for cataloguing say. A closed list; it changes
/// what is written from now on, never what is kept.
/// </summary>
public sealed record SizeWriting
{
    private SizeWriting(string word, string description) => (Word, Description) = (word, description);

    /// <summary>In the register's unit, nothing rounded but inches, to the nearest sixteenth.</summary>
    public static SizeWriting Measured { get; } = new("measured", "nothing is rounded");

    /// <summary>Cataloging Cultural Objects, part 3: centimetres with decimals, and inches to the nearest quarter.</summary>
    public static SizeWriting Cco { get; } = new("cco", "cm with decimals, inches to the nearest quarter");

    /// <summary>Graphic Materials of the Library of Congress, 3D2: up to the next whole centimetre, and inches up to the next quarter.</summary>
    public static SizeWriting Lc { get; } = new("lc", "up to the next cm, inches up to the next quarter");

    /// <summary>The option of the same rule: the nearest millimetre, and inches up to the next eighth.</summary>
    public static SizeWriting LcMillimetres { get; } = new("lc-mm", "nearest mm, inches up to the next eighth");

    public static IReadOnlyList<SizeWriting> All { get; } = [Measured, Cco, Lc, LcMillimetres];

    /// <summary>As commands and register.toml have it.</summary>
    public string Word { get; }

    public string Description { get; }

    public static SizeWriting? Of(string? word) => All.FirstOrDefault(writing => string.Equals(writing.Word, word, StringComparison.OrdinalIgnoreCase));

    public override string ToString() => Word;
}
