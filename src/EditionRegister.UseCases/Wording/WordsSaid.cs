using EditionRegister.Domain.Numbers;

namespace EditionRegister.UseCases.Wording;

/// <summary>What is said when the register has got a word of its own.</summary>
public static class WordsSaid
{
    /// <summary>Kind lettered made: “L.P.”, lettered proof; not in the size, in the total, for sale.</summary>
    public static string Kind(string deed, NumberingKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);

        return $"Kind {kind.Word} {deed}: “{kind.Mark}”, {kind.Name}; {Not(kind.InSize)}in the size, {Not(kind.InTotal)}in the total, {Not(kind.ForSale)}for sale.";
    }

    public static string Fault(string word, string name) => $"Fault {word} added: {name.Trim()}.";

    public static string Technique(string word, string name) => $"Technique {word} added: {name.Trim()}. It is read in words from now on.";

    private static string Not(bool yes) => yes ? "" : "not ";
}
