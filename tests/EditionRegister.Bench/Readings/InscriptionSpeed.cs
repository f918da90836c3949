using System.Globalization;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Reading.Lettering;

namespace EditionRegister.Bench.Readings;

/// <summary>How many inscriptions are read in a second, and what a character of the worst long text costs against one of an ordinary row.</summary>
internal static class InscriptionSpeed
{
    private const int Rounds = 4;

    /// <summary>Each is repeated until the text is long enough: what asks a reader to look ahead again and again.</summary>
    private static readonly string[] Repeated =
    [
        "1/", "I/", "1/1 ", "1 / ", "?/", "1-", "1. ", "7", "X", "X V ", "edition of ", "ed. ", "no. ", "#", "#1 ", "((((", "\"", "1/2\" ", "second or ", "first ", "2nd ", "one hundred and ", "twenty-", "at least ", "between 1 and ",
        "state ", "state I ", "proof ", "artist's ", "épreuve d'", "color trail [sic] ", "A.", "A. P. ", "AP ", "A/P 1/5 ", "I-I AP, ", "3 AP, ", "imp. ", "of ", "vol. 1 ", "3/20/65 ", "e\u0301", "\uD800", "\0", "mixed 3/12 Harbour IV of x, ",
        "del. et ", "sculp. ", "J. ", "Name ", "printed by ", "C.P.S.C.M. ",
    ];

    public static void Print(List<string> texts, TextWriter output)
    {
        var characters = texts.Sum(text => (long)text.Length);
        var statements = Best(() => texts.ForEach(text => EditionStatementReader.Read(text)), milliseconds: 400);
        var lettering = Best(() => texts.ForEach(text => LetteringReader.Read(text)), milliseconds: 400);

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"inscriptions a second: {texts.Count / statements * 1e9:0} statements, {texts.Count / lettering * 1e9:0} letterings (processor time of one core, best of {Rounds} rounds)"));
        Worst("statements", text => _ = EditionStatementReader.Read(text).Left.Count, statements / characters, output);
        Worst("lettering", text => _ = LetteringReader.Read(text).Count, lettering / characters, output);
    }

    private static void Worst(string what, Action<string> read, double ordinary, TextWriter output)
    {
        foreach (var size in new[] { 32 * 1_024, 64 * 1_024 })
        {
            var (ratio, unit) = Repeated.Select(unit => (Ratio: OfLong(unit, size, read) / size / ordinary, Unit: unit)).MaxBy(one => one.Ratio);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {what}, {size / 1_024} KB: at worst {ratio:0.0} times an ordinary row's time for a character («{unit.Replace('\0', '0')}» again and again)"));
        }
    }

    private static double OfLong(string unit, int size, Action<string> read)
    {
        var text = string.Concat(Enumerable.Repeat(unit, (size / unit.Length) + 1))[..size];

        return Best(() => read(text));
    }

    /// <summary>Nanoseconds of processor time, so that a busy machine counts the same: the best of some rounds; the first ones warm up.</summary>
    private static double Best(Action work, int milliseconds = 8)
    {
        var best = double.MaxValue;

        for (var round = 0; round < 2 * Rounds; round++)
        {
            var (start, took, times) = (Environment.CpuUsage.UserTime, TimeSpan.Zero, 0);

            while (took.TotalMilliseconds < milliseconds)
            {
                work();
                times++;
                took = Environment.CpuUsage.UserTime - start;
            }

            best = round >= Rounds ? Math.Min(best, took.TotalNanoseconds / times) : best;
        }

        return best;
    }
}
