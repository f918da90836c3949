using System.Text;

namespace EditionRegister.Bench.Readings;

/// <summary>Texts that no one writes, of any length: each repeats what a reader might stumble over. The same in every run.</summary>
internal static class AdversarialTexts
{
    // Kinds of texts: signs and digits, letters and marks, and words of what is read.
    private static readonly string[] Repeated =
    [
        "1", "12 ", "1/", "1/2 ", "1 1/2 x ", "1,", "1.", "1-", "(", ")", "x)", "()", "[", "?", "; ", ", ", "x, ", "'", "\"", "-", "a-", "#", "|", "⏎ ", " ", "\t", "\n", "\0",
        "a", "a ", "A.", "I", "IV ", "x", "é", "e\u0301", "e\u0301 ", "\u0301", "ß", "İ", "ı ", "\uD83D\uDDBC", "\uD83D", "\uDDBC ", "漢", "ⅷ ", "½", "½ x ",
        "artist's proof ", "A/P ", "ed. ", "edition of ", "of ", "one of an edition of ", "state ", "3rd state of ", "H.C. ", "no. ", "from an edition of 1 ",
        "c. ", "circa ", "before ", "after ", "between ", "19", "1920s ", "century ", "early ", "printed ", "January ", "1 May ", "or ", "B.C. ", "about 19",
        "cm ", "in. ", "x 1 ", "sheet: ", "image ", "1 cm x ", "height ", "1/16 in. (1 cm) ", "inches x ", "' ", "mm (",
        "etching ", "print ", "after an etching ", "after a ", "on ", "on paper ", "on a, ", "color ", "color, ", "in color ", "two-color ", "reduction ", "chine collé ", "on chine collé and ", "from three ", "hand-colored ", "engraved ", "engraved glass ", "line and ", "line and stipple ", "and ", "with ", "photograph ",
    ];

    public static IEnumerable<(string Name, Func<int, string> Make)> All =>
    [
        .. Repeated.Select(text => ($"“{Visible(text)}” again and again", (Func<int, string>)(length => Repeat(text, length)))),
        ("one word of the alphabet", length => Repeat("abcdefghijklmnopqrstuvwxyz", length)),
        ("“etching on”, then one long phrase, then “on a” again and again", length => "etching on " + Repeat("word ", length / 2) + Repeat(", on a", length - 11 - (length / 2))),
        ("“etching”, then signs, then “color,” again and again", length => "etching " + Repeat("!", length / 2) + Repeat(",color,", length - 8 - (length / 2))),
        ("words drawn at random", length => Drawn(length, random => Repeated[random.Next(Repeated.Length)])),
        ("code units drawn at random", length => Drawn(length, random => ((char)random.Next(char.MaxValue + 1)).ToString())),
        ("Latin letters, marks and signs drawn at random", length => Drawn(length, random => ((char)random.Next(' ', '\u0370')).ToString())),
    ];

    private static string Repeat(string text, int length) => string.Concat(Enumerable.Repeat(text, (length / text.Length) + 1))[..length];

    private static string Drawn(int length, Func<Random, string> draw)
    {
        Random random = new(20_251_125);
        StringBuilder text = new(length + 100);

        while (text.Length < length)
        {
            text.Append(draw(random));
        }

        return text.ToString(0, length);
    }

    private static string Visible(string text) => string.Concat(text.Select(c => char.IsControl(c) || char.IsSurrogate(c) || c is >= '\u0300' and <= '\u036F' ? $"\\u{(int)c:X4}" : c.ToString()));
}
