using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents.Drawing;
using EditionRegister.Formats.Documents.Layout;
using EditionRegister.Formats.Documents.Qr;
using static EditionRegister.Formats.Documents.Certificates.CertificateSettings;

namespace EditionRegister.Formats.Documents.Certificates;

/// <summary>The foot of the last page: code and QR code, lines for signing by hand, the caution, and the logbook's head.</summary>
internal sealed class CertificateFoot
{
    private const double QrSide = 27;
    private const double LargestQrSide = 45;

    // Room to write in above the lines.
    private const double Handwriting = 15;

    private readonly CertificateGrid _grid;
    private readonly Typesetter _type;
    private readonly CertificateStatement _statement;
    private readonly CertificateParts _parts;
    private readonly QrMatrix? _qr;
    private readonly double _side;
    private readonly CertificateRows _underCode;
    private readonly IReadOnlyList<string> _caution;
    private readonly IReadOnlyList<string> _sentence;
    private readonly IReadOnlyList<string> _head;

    public CertificateFoot(CertificateStatement statement, CertificateParts parts, LogbookHead head, string sentence, CertificateGrid grid, Typesetter type)
    {
        (_grid, _type, _statement, _parts) = (grid, type, statement, parts);
        _qr = statement.Link is { } link ? QrMatrix.Of(link) : null;
        _side = _qr is null ? 0 : QrFit.Side(_qr, QrSide, LargestQrSide, statement.Code);
        _underCode = new(parts.UnderCode, ValueFloor + 0.5, 0.3, grid, type);
        _caution = Caution.Wrap(statement.Caution, grid.Width, type);
        _sentence = Logbook.Wrap(sentence, grid.Width, type);
        _head = Head.Wrap(LogbookLine.Of(head), grid.Width, type);
    }

    private double CodeHeight => Math.Max(_side, 9 + _underCode.Height);

    public double Height => 4 + CodeHeight + Handwriting + Under.Leading + 6
        + (_caution.Count * Caution.Leading) + 2.5
        + (_sentence.Count * Logbook.Leading) + (_head.Count * Head.Leading);

    public void Place(PageBuilder page, double top)
    {
        page.Rule(_grid.Left, top, _grid.Width);
        PlaceCode(page, top + 4);
        var y = PlaceSignature(page, top + 4 + CodeHeight + Handwriting) + 6;
        y = Lines(page, Caution, _caution, y) + 2.5;
        y = Lines(page, Logbook, _sentence, y);
        Lines(page, Head, _head, y);
    }

    private void PlaceCode(PageBuilder page, double top)
    {
        var baseline = top + 6;
        page.Add(Caption.EndingAt(_grid.LabelRight, baseline, _parts.Code.Label, _type));
        page.Add(Code.At(_grid.Axis, baseline, _parts.Code.Value));

        var y = baseline + 2;

        foreach (var line in _underCode.Lines)
        {
            y = _underCode.Place(page, y, line);
        }

        if (_qr is not null)
        {
            // The quiet zone hangs into the margin, so that the code's own edge stands on it.
            var quiet = _side / _qr.ModulesWithQuiet * QrMatrix.QuietModules;
            page.Qr(new(_grid.Right - _side + quiet, top - quiet + 3, _side, _side), _qr);
        }
    }

    private double PlaceSignature(PageBuilder page, double y)
    {
        const double dateWidth = 44;
        var dateX = _grid.Right - dateWidth;

        page.Rule(_grid.Left, y, dateX - 8 - _grid.Left, 0.2, Ink.Black);
        page.Rule(dateX, y, dateWidth, 0.2, Ink.Black);
        page.Add(Under.At(_grid.Left, y + Under.Leading, _statement.SignatureLabel));
        page.Add(Under.At(dateX, y + Under.Leading, _statement.DateLabel));
        return y + Under.Leading;
    }

    private double Lines(PageBuilder page, Setting setting, IReadOnlyList<string> lines, double y)
    {
        foreach (var line in lines)
        {
            page.Add(setting.At(_grid.Left, y += setting.Leading, line));
        }

        return y;
    }
}
