using System.Diagnostics;
using System.Globalization;
using EditionRegister.Domain.Reading.Papers;
using EditionRegister.Domain.Reading.Sizes;

namespace EditionRegister.Bench.Readings;

/// <summary>The time a reader takes for a character of texts made to be slow, against ordinary rows: whatever is typed, neither grows with the length of the text.</summary>
internal static class WorstFigures
{
    // What a reader may look ahead or back for without end: figures, joiners, names, brackets, hedges, and each of them over and over.
    private static readonly string[] Pieces =
    [
        "1", "1 ", "1x", "1 x 1 ", "1x1 ", "1x1;", "1 x 1 cm (", "1 cm (1 in) ", "(", ")", "((1x1cm", "image ", "image/", "image, each: 1x1cm ", "sheet & ", "a ", "a:1cm ", "c. ", "each ", "1/", "1/2/", "1 1/2 ",
        "1,", "1.", "1.1.", "1'", "1\"", "1-", "½", "³", "H1 ", "h 1, w 1; ", "H x W x ", "1 x 1 (1 x 1) ", "diam ", ": ", "- ", "\n", "  ", "x", " x ", "by ", "é", "\uD800", "\u0307",
        "1 g ", "70 g/", "140 lb (", "140 lb, basis 22 x ", "basis ", "deckle ", "four ", "deckle on four ", "cut edges ", "lot ", "lot 1-", "lot 1-1-1-", "by A ", "made by ", "maker: A ", "A4 ", "imperial ", "on ", "paper: ", ", ", "with 1 g with ",
    ];

    public static void Print(string folder, TextWriter output)
    {
        Sizes(folder, output);
        Papers(folder, output);
    }

    private static void Sizes(string folder, TextWriter output) => Print("sizes", Texts(folder, "dimensions*.tsv"), text => SizeReader.Read(text, LengthUnit.Millimetre).Explain(), output);

    private static void Papers(string folder, TextWriter output) => Print("papers", Texts(folder, "mediums.tsv"), text => PaperReader.Read(text).Write(), output);

    private static List<string> Texts(string folder, string pattern) =>
        Directory.GetFiles(folder, pattern).Order(StringComparer.Ordinal).Take(1).SelectMany(file => TableFile.Read(file) is var table ? table.Rows.Select(row => table[row, "text"]) : []).ToList();

    private static void Print(string reader, List<string> ordinary, Action<string> read, TextWriter output)
    {
        if (ordinary.Count == 0)
        {
            return;
        }

        var usual = Nanoseconds(ordinary, read);
        var half = Slowest(32 * 1024, read);
        var whole = Slowest(64 * 1024, read);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{reader}, worst of {Pieces.Length + RandomTexts} texts: {whole.Time:0} ns a character at 64 KB ({whole.Name}), {half.Time:0} at 32 KB ({half.Name}), against {usual:0} in ordinary rows; {whole.Time / usual:0.0} times, and {whole.Time / half.Time:0.00} times from 32 to 64 KB"));
    }

    private const int RandomTexts = 12;

    private static (double Time, string Name) Slowest(int length, Action<string> read) =>
        Candidates(length).Select(text => (Nanoseconds([text], read), Shown(text))).MaxBy(one => one.Item1);

    private static IEnumerable<string> Candidates(int length)
    {
        // Seeded, so that two runs read the same.
        Random random = new(20_260_301);

        foreach (var piece in Pieces)
        {
            yield return string.Concat(Enumerable.Repeat(piece, (length / piece.Length) + 1))[..length];
        }

        for (var i = 0; i < RandomTexts; i++)
        {
            yield return string.Concat(Enumerable.Range(0, length).Select(_ => Pieces[random.Next(Pieces.Length)]))[..length];
        }
    }

    private static string Shown(string text) => Domain.Text.SafeText.Show(text[..Math.Min(16, text.Length)]) + "…";

    /// <summary>The best of five, so that what else the machine does is not counted.</summary>
    private static double Nanoseconds(List<string> texts, Action<string> read)
    {
        var best = TimeSpan.MaxValue;
        texts.ForEach(read);

        for (var i = 0; i < 5; i++)
        {
            var watch = Stopwatch.StartNew();
            texts.ForEach(read);
            best = watch.Elapsed < best ? watch.Elapsed : best;
        }

        return best.TotalNanoseconds / texts.Sum(text => text.Length);
    }
}
