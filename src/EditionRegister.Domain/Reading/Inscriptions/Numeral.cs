using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

internal enum NumeralKind : byte
{
    Arabic,
    Roman,
    Letter,
    Word,
    Unknown,
}

/// <summary>A number as it stands in a text: its value, how it is written, and the token after it.</summary>
internal readonly record struct Numeral(NumeralKind Kind, int Value, int Next)
{
    /// <summary>A question mark where a number is due.</summary>
    public bool IsUnknown => Kind == NumeralKind.Unknown;

    public bool IsRoman => Kind == NumeralKind.Roman;
}

/// <summary>Reads numbers as people write them: 12, 1 250, XII, xxxx, twelve, douze, and ? where one is missing.</summary>
internal static class Numerals
{
    private static readonly Dictionary<string, int> Words = Cardinals();

    public static Numeral? Arabic(TokenText text, int at)
    {
        if (text.Figure(at) is not { } value || text.Written(at) is ['0', ..])
        {
            return null;
        }

        // 1,575 and 1.250: a group of exactly three after a tight sign.
        return text.IsAnySign(at + 1, ",.") && !text.IsApart(at + 1) && !text.IsApart(at + 2) && text[at].Length <= 3
            && text.IsDigits(at + 2) && text[at + 2].Length == 3 && text.Figure(at + 2) is { } group
            ? new Numeral(NumeralKind.Arabic, (value * 1_000) + group, at + 3)
            : new Numeral(NumeralKind.Arabic, value, at + 1);
    }

    /// <summary>Roman numerals, irregular ones too (XXXX, IIII), all in capitals or all in small letters.</summary>
    public static Numeral? Roman(TokenText text, int at) => RomanValue(text.Written(at)) is { } value ? new Numeral(NumeralKind.Roman, value, at + 1) : null;

    public static Numeral? Either(TokenText text, int at) =>
        text.IsDigits(at) ? Arabic(text, at) : text.IsSign(at, '?') ? new Numeral(NumeralKind.Unknown, 0, at + 1) : Roman(text, at);

    /// <summary>Digits or a number word.</summary>
    public static Numeral? Cardinal(TokenText text, int at) =>
        text.IsDigits(at) ? Arabic(text, at)
        : Words.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text.Word(at), out var value) ? new Numeral(NumeralKind.Word, value, at + 1)
        : null;

    /// <summary>The value of a word that is nothing but roman numerals, or null.</summary>
    public static int? RomanValue(ReadOnlySpan<char> word)
    {
        if (word.Length is 0 or > 12)
        {
            return null;
        }

        var small = char.IsAsciiLetterLower(word[0]);
        var (sum, before) = (0, int.MaxValue);

        foreach (var letter in word)
        {
            var value = Value(small ? letter : char.IsAsciiLetterUpper(letter) ? char.ToLowerInvariant(letter) : ' ');

            if (value == 0)
            {
                return null;
            }

            sum += value > before ? value - (2 * before) : value;
            before = value;
        }

        return sum is > 0 and < 4_000 ? sum : null;
    }

    private static int Value(char letter) => letter switch { 'i' => 1, 'v' => 5, 'x' => 10, 'l' => 50, 'c' => 100, 'd' => 500, 'm' => 1_000, _ => 0 };

    private static Dictionary<string, int> Cardinals()
    {
        string[][] languages =
        [
            ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen", "twenty"],
            ["", "deux", "trois", "quatre", "cinq", "six", "sept", "huit", "neuf", "dix", "onze", "douze", "treize", "quatorze", "quinze", "seize", "", "", "", "vingt"],
            ["", "due", "tre", "quattro", "cinque", "sei", "sette", "otto", "nove", "dieci", "undici", "dodici", "tredici", "quattordici", "quindici", "sedici", "diciassette", "diciotto", "diciannove", "venti"],
            ["", "zwei", "drei", "vier", "funf", "sechs", "sieben", "acht", "neun", "zehn", "elf", "zwolf", "dreizehn", "vierzehn", "funfzehn", "sechzehn", "siebzehn", "achtzehn", "neunzehn", "zwanzig"],
            ["", "dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve", "diez", "once", "doce", "trece", "catorce", "quince", "", "", "", "", "veinte"],
        ];
        Dictionary<string, int> words = new(StringComparer.Ordinal)
        {
            ["thirty"] = 30, ["forty"] = 40, ["fifty"] = 50, ["sixty"] = 60, ["seventy"] = 70, ["eighty"] = 80, ["ninety"] = 90,
            ["trente"] = 30, ["quarante"] = 40, ["cinquante"] = 50, ["trenta"] = 30, ["quaranta"] = 40, ["cinquanta"] = 50,
            ["dreissig"] = 30, ["vierzig"] = 40, ["funfzig"] = 50, ["treinta"] = 30, ["cuarenta"] = 40, ["cincuenta"] = 50, ["cento"] = 100, ["cent"] = 100, ["hundert"] = 100, ["cien"] = 100,
        };

        foreach (var language in languages)
        {
            for (var i = 0; i < language.Length; i++)
            {
                if (language[i].Length > 0)
                {
                    words.TryAdd(language[i], i + 1);
                }
            }
        }

        return words;
    }
}
