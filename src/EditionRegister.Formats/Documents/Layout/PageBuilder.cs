using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents.Qr;

namespace EditionRegister.Formats.Documents.Layout;

/// <summary>Collects what goes on one page.</summary>
internal sealed class PageBuilder(double width, double height)
{
    private readonly List<TextPiece> _texts = [];
    private readonly List<Hairline> _hairlines = [];
    private readonly List<QrMark> _marks = [];

    public void Add(TextPiece text) => _texts.Add(text);

    public void Rule(double x, double y, double length, double thickness = 0.15, Ink ink = Ink.Grey) =>
        _hairlines.Add(new(x, y, length, thickness, ink));

    public void Qr(Box box, QrMatrix matrix) => _marks.Add(new(box, matrix));

    public PageLayout Build() => new(width, height, _texts, _hairlines, _marks);
}
