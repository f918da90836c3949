using System.Text;
using HarfBuzzSharp;
using Buffer = HarfBuzzSharp.Buffer;
using Face = EditionRegister.Formats.Documents.Layout.Face;

namespace EditionRegister.Formats.Documents.Drawing;

/// <summary>Shapes words for one document, so that what was measured is what is drawn.</summary>
internal sealed class Typesetter : IDisposable
{
    /// <summary>Millimetres in a point.</summary>
    public const double Point = 25.4 / 72;

    private static readonly Feature[] NoLigatures = [Feature.Parse("-liga"), Feature.Parse("-clig")];

    private readonly FontShelf _shelf = new();
    private readonly Dictionary<(string, Face, double), ShapedText> _shaped = [];

    /// <summary>Millimetres.</summary>
    public double Width(string words, Face face, double size, double tracking = 0) =>
        Shape(words, face, tracking / size).Width * size * Point;

    /// <param name="tracking">Ems added after each letter.</param>
    public ShapedText Shape(string words, Face face, double tracking)
    {
        if (!_shaped.TryGetValue((words, face, tracking), out var shaped))
        {
            _shaped[(words, face, tracking)] = shaped = ShapeAnew(words, face, tracking);
        }

        return shaped;
    }

    public void Dispose() => _shelf.Dispose();

    private ShapedText ShapeAnew(string words, Face face, double tracking)
    {
        List<ShapedRun> runs = [];
        var x = 0.0;

        foreach (var run in Itemiser.Split(Printable(words), face, _shelf))
        {
            runs.Add(ShapeRun(run, tracking, ref x));
        }

        return new(runs, words.Length > 0 ? x - tracking : 0);
    }

    private static ShapedRun ShapeRun(TextRun run, double tracking, ref double x)
    {
        var utf8 = Encoding.UTF8.GetBytes(run.Text);
        using Buffer buffer = new();
        buffer.AddUtf8(utf8);
        buffer.GuessSegmentProperties();
        buffer.Direction = run.RightToLeft ? Direction.RightToLeft : Direction.LeftToRight;
        run.Font.Shaper.Shape(buffer, tracking == 0 ? [] : NoLigatures);

        var (infos, places) = (buffer.GlyphInfos, buffer.GlyphPositions);
        ShapedRun shaped = new(
            run.Font,
            utf8,
            Array.ConvertAll(infos, info => (ushort)(info.Codepoint == 0 ? run.Font.MissingGlyph : info.Codepoint)),
            Array.ConvertAll(infos, info => info.Cluster),
            new double[infos.Length],
            new double[infos.Length]);

        for (var i = 0; i < infos.Length; i++)
        {
            double em = run.Font.Em;
            shaped.X[i] = x + (places[i].XOffset / em);
            shaped.Y[i] = -places[i].YOffset / em;
            x += (infos[i].Codepoint == 0 ? run.Font.MissingAdvance : places[i].XAdvance) / em;
            x += i + 1 == infos.Length || infos[i + 1].Cluster != infos[i].Cluster ? tracking : 0;
        }

        return shaped;
    }

    // A control character has no shape; half a surrogate pair cannot be said in UTF-8.
    private static string Printable(string words) => string.Concat(words.EnumerateRunes().Select(rune => Rune.IsControl(rune) ? " " : rune.ToString()));
}
