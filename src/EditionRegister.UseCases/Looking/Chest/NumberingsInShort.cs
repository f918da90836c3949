using System.Globalization;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Numbers;

namespace EditionRegister.UseCases.Looking;

/// <summary>The numberings of an edition as short as a list needs them: <c>12 + 2 A/P</c>, <c>40 + I–X</c>, <c>open</c>, <c>? A/P</c> where nobody knows how many.</summary>
public static class NumberingsInShort
{
    public static string Of(Edition edition) => string.Join(" + ", edition.Numberings.Select(Of));

    private static string Of(Numbering numbering)
    {
        var mark = numbering.Kind?.Mark ?? numbering.KindWord;

        return numbering is { Size: 1, Kind: not null } && numbering.Notation == Notation.None ? mark
            : mark.Length == 0 ? Size(numbering) + (numbering.Name is { } name ? $" {name}" : "")
            : $"{Count(numbering)} {mark}{(IsWords(numbering) && numbering.Size != 1 ? "s" : "")}";
    }

    // Where no mark is settled in the trade, the words stand for it.
    private static bool IsWords(Numbering numbering) => numbering.Kind is { } kind && kind.Mark == kind.Name;

    private static string Count(Numbering numbering) =>
        numbering.Size is { } size ? size.ToString(CultureInfo.InvariantCulture) : numbering.IsOpen ? "open" : SizeNotSure.Bare(numbering.Hedge, numbering.HedgedSize) ?? "?";

    // Two runs of one edition are told apart by how they are written.
    private static string Size(Numbering numbering) =>
        numbering is { Size: { } size and >= 1, Notation: { } notation } && notation != Notation.Arabic && notation != Notation.None && size <= notation.Largest
            ? size == 1 ? notation.Write(1) : $"{notation.Write(1)}–{notation.Write(size)}"
            : Count(numbering);
}
