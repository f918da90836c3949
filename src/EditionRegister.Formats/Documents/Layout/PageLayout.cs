using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents.Qr;

namespace EditionRegister.Formats.Documents.Layout;

/// <summary>One page with everything decided: nothing is left to the drawing but to draw. Millimetres from the top left corner.</summary>
internal sealed record PageLayout(
    double Width,
    double Height,
    IReadOnlyList<TextPiece> Texts,
    IReadOnlyList<Hairline> Hairlines,
    IReadOnlyList<QrMark> QrMarks);

/// <summary>Words on one line, from their left edge; size and tracking (added after each letter) in points.</summary>
internal sealed record TextPiece(double X, double Baseline, string Words, Face Face, double Size, Ink Ink = Ink.Black, double Tracking = 0);

/// <summary>A level rule.</summary>
internal sealed record Hairline(double X, double Y, double Width, double Thickness, Ink Ink);

/// <summary>A QR code with its quiet zone inside <paramref name="Box"/>.</summary>
internal sealed record QrMark(Box Box, QrMatrix Matrix);
