using EditionRegister.Formats.Documents.Drawing;

namespace EditionRegister.Formats.Documents.Layout;

/// <summary>A manner of setting words: face, size and tracking in points, ink.</summary>
internal sealed record Setting(Face Face, double Size, Ink Ink = Ink.Black, double Tracking = 0)
{
    /// <summary>Height of a line in millimetres, of the usual proportion for reading.</summary>
    public double Leading => Size * Typesetter.Point * 1.36;

    public double Width(string words, Typesetter type) => type.Width(words, Face, Size, Tracking);

    public IReadOnlyList<string> Wrap(string words, double width, Typesetter type) =>
        Wrapping.Wrap(words, line => Width(line, type) <= width, breakWords: true)!;

    /// <summary>Null if a word would have to be broken.</summary>
    public IReadOnlyList<string>? WrapWhole(string words, double width, Typesetter type) =>
        Wrapping.Wrap(words, line => Width(line, type) <= width, breakWords: false);

    public TextPiece At(double x, double baseline, string words) => new(x, baseline, words, Face, Size, Ink, Tracking);

    public TextPiece EndingAt(double right, double baseline, string words, Typesetter type) =>
        At(right - Width(words, type), baseline, words);
}
