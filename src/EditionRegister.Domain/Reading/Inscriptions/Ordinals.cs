using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>Reads which one is meant: 2nd, 2e, 2., second, deuxième, zweiter, twenty-ninth, II.</summary>
internal static class Ordinals
{
    private static readonly Dictionary<string, int> Words = new(StringComparer.Ordinal)
    {
        ["first"] = 1, ["second"] = 2, ["third"] = 3, ["fourth"] = 4, ["fifth"] = 5, ["sixth"] = 6, ["seventh"] = 7, ["eighth"] = 8, ["ninth"] = 9, ["tenth"] = 10,
        ["eleventh"] = 11, ["twelfth"] = 12, ["thirteenth"] = 13, ["fourteenth"] = 14, ["fifteenth"] = 15, ["sixteenth"] = 16, ["seventeenth"] = 17, ["eighteenth"] = 18,
        ["nineteenth"] = 19, ["twentieth"] = 20, ["thirtieth"] = 30, ["fortieth"] = 40, ["fiftieth"] = 50,
        ["premier"] = 1, ["premiere"] = 1, ["deuxieme"] = 2, ["seconde"] = 2, ["troisieme"] = 3, ["quatrieme"] = 4, ["cinquieme"] = 5, ["sixieme"] = 6, ["septieme"] = 7, ["huitieme"] = 8, ["neuvieme"] = 9, ["dixieme"] = 10,
        ["primo"] = 1, ["prima"] = 1, ["secondo"] = 2, ["seconda"] = 2, ["terzo"] = 3, ["terza"] = 3, ["quarto"] = 4, ["quarta"] = 4, ["quinto"] = 5, ["sesto"] = 6,
        ["primer"] = 1, ["segundo"] = 2, ["tercer"] = 3, ["tercero"] = 3, ["cuarto"] = 4, ["sexto"] = 6,
        ["erster"] = 1, ["erste"] = 1, ["ersten"] = 1, ["zweiter"] = 2, ["zweite"] = 2, ["zweiten"] = 2, ["dritter"] = 3, ["dritte"] = 3, ["dritten"] = 3, ["vierter"] = 4, ["vierte"] = 4, ["funfter"] = 5, ["sechster"] = 6,
        // Written so for eighth on more than one sheet.
        ["eight"] = 8,
    };

    private static readonly Dictionary<string, int> Tens = new(StringComparer.Ordinal)
    {
        ["twenty"] = 20, ["thirty"] = 30, ["forty"] = 40, ["fifty"] = 50,
    };

    public static Numeral? Read(TokenText text, int at)
    {
        if (Words.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text.Word(at), out var value))
        {
            return new Numeral(NumeralKind.Word, value, at + 1);
        }

        if (Tens.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text.Word(at), out var ten) && text.IsSign(at + 1, '-')
            && Words.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text.Word(at + 2), out var one) && one < 10)
        {
            return new Numeral(NumeralKind.Word, ten + one, at + 3);
        }

        if (text.IsDigits(at) && text.Figure(at) is { } figure && figure > 0)
        {
            return IsEnding(text.Word(at + 1)) ? new Numeral(NumeralKind.Arabic, figure, at + 2)
                : text.IsAnySign(at + 1, ".°º") && !text.IsApart(at + 1) ? new Numeral(NumeralKind.Arabic, figure, at + 2)
                : new Numeral(NumeralKind.Arabic, figure, at + 1);
        }

        return Numerals.Roman(text, at) is not { } roman ? null
            : IsRomanEnding(text.Word(at + 1)) ? roman with { Next = at + 2 }
            : text.IsSign(at + 1, '.') && !text.IsApart(at + 1) ? roman with { Next = at + 2 }
            : roman;
    }

    private static bool IsEnding(ReadOnlySpan<char> word) => word is "st" or "nd" or "rd" or "th" or "d" or "e" or "er" or "ere" or "eme" or "ieme" or "re" or "o" or "a" or "te" or "ter";

    private static bool IsRomanEnding(ReadOnlySpan<char> word) => word is "e" or "er" or "eme" or "ieme";
}
