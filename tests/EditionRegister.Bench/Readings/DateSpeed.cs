using System.Diagnostics;
using System.Globalization;
using EditionRegister.Domain.Reading.Dates;

namespace EditionRegister.Bench.Readings;

/// <summary>Whether any text makes the reader of dates slow: pieces of dates over and over, and pieces and letters at random, up to 64 KB.</summary>
internal static class DateSpeed
{
    private const int Longest = 65_536;
    private const int Runs = 4;

    private static readonly string[] Pieces =
    [
        "c. ", "1900-", "1900/", "1900 or after ", "1900 or ", "[", "(", "(1900", ")", "before ", "after ", "after 1900 ", "not before ", "the ", "l'", "1st-", "1st, ", "XIX-", "early ", "mid-", "early to ", "second half of the ",
        "19th century/", "1926, ", "1926 and ", "1926; ", "printed ", "printed later ", "printed 1926 ", "after a ", "copy of a ", "1/", "1.", "1-", "01/02/1926", "1926-01-02 ", "January ", "January-", "1 January ", "spring ", "winter 1926/", "1920s-",
        "'20s-", "a. 1 ", "A.H. ", "B.", "C. ", "B. C. ", "1 BC-", "70-230 ", "197-", "18--", "[1][9]", "0[", "±5 ", "+/- ", "1950 ± ", "1926?", "?", "~", "possibly ", "between ", "between 1900 and ", "XXXX/", "19XX-", "MCMXXVI ", "M", "é", "\u0301", "⏎",
        "between 1926 or earlier and ", "in the style of ", "with ", "of the ", "1926 (January) ", "n.d. ", " ", "9", "1926", "century ", "des ", "november", "novembre ",
    ];

    public static void Print(TextWriter output)
    {
        // Once for the compiler, so that the first text is not the slowest for being the first.
        _ = Slowest(1_024);
        var (half, _) = Slowest(Longest / 2);
        var (whole, text) = Slowest(Longest);

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"dates, speed: {Texts(Longest).Count()} texts of 64 KB; the slowest took {whole.TotalMilliseconds:0} ms, at half the length {half.TotalMilliseconds:0} ms ({Escaped(text)}…)"));
    }

    private static (TimeSpan Taken, string Text) Slowest(int length) => Texts(length).Select(text => (Taken: Best(text), text)).MaxBy(one => one.Taken);

    // The best of a few runs, so that what else the machine does is not measured.
    private static TimeSpan Best(string text) => Enumerable.Range(0, Runs).Min(_ => Time(text));

    private static TimeSpan Time(string text)
    {
        var watch = Stopwatch.StartNew();

        if (DateReader.Read(text) is { } read)
        {
            _ = ReadDateInWords.Of(read, text);
        }
        else
        {
            _ = DateUnread.Why(text);
        }

        return watch.Elapsed;
    }

    private static IEnumerable<string> Texts(int length)
    {
        // The same texts in every run.
        Random random = new(1926);

        return Pieces.Select(piece => Repeated(() => piece, length))
            .Concat(Enumerable.Range(0, 60).Select(_ => Repeated(() => Pieces[random.Next(Pieces.Length)], length)))
            .Concat(Enumerable.Range(0, 60).Select(_ => Pair(random, length)))
            .Concat(Enumerable.Range(0, 20).Select(_ => Repeated(() => ((char)random.Next(0x20, 0x250)).ToString(), length)));
    }

    private static string Pair(Random random, int length)
    {
        var pair = Pieces[random.Next(Pieces.Length)] + Pieces[random.Next(Pieces.Length)];

        return Repeated(() => pair, length);
    }

    private static string Repeated(Func<string> piece, int length)
    {
        System.Text.StringBuilder text = new(length + 64);

        while (text.Length < length)
        {
            text.Append(piece());
        }

        return text.ToString(0, length);
    }

    private static string Escaped(string text) => text[..Math.Min(24, text.Length)].ReplaceLineEndings(" ");
}
