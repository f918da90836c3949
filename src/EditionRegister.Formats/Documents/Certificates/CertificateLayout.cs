using System.Globalization;
using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents.Drawing;
using EditionRegister.Formats.Documents.Layout;
using static EditionRegister.Formats.Documents.Certificates.CertificateSettings;

namespace EditionRegister.Formats.Documents.Certificates;

/// <summary>Decides a certificate to the last millimetre: one page where the values fit at a readable size, else as many as they need.</summary>
internal sealed class CertificateLayout(CertificateStatement statement, LogbookHead head, Typesetter type)
{
    // Kept free at the bottom of each page for its number, where there are several.
    private const double FolioHeight = 6;

    // Space between rows, in lines.
    private const double MostAir = 0.5;
    private const double LeastAir = 0.25;

    private readonly CertificateGrid _grid = new(statement.Page);
    private readonly CertificateParts _parts = new(statement);
    private readonly List<PageBuilder> _pages = [];

    public IReadOnlyList<PageLayout> Pages()
    {
        CertificateFoot foot = new(statement, _parts, head, statement.LogbookSentence, _grid, type);
        RefuseTooMuchAtTheFoot(foot);
        var page = NewPage();
        var (top, tooLong) = new CertificateHead(_grid, type).Place(page, statement.Heading, _parts);
        StatementLine[] lines = [.. tooLong, .. _parts.Rows];
        var room = _grid.Bottom - foot.Height - 4 - top;

        if (OnOnePage(lines, room) is { } rows)
        {
            Place(page, rows, rows.Lines, top);
            foot.Place(page, _grid.Bottom - foot.Height);
        }
        else
        {
            OverPages(page, lines, top, foot);
        }

        return [.. _pages.Select(built => InReadingOrder(built.Build()))];
    }

    // Only a caution or sentence of the user's own wording can grow so long.
    private void RefuseTooMuchAtTheFoot(CertificateFoot foot)
    {
        if (foot.Height > _grid.Bottom - _grid.Top - (2 * FolioHeight))
        {
            throw new RefusedException(
                "certificate-wording-too-long",
                $"No certificate was written: the caution and logbook sentence of {statement.Code} fill more than a page. Shorten them in certificate.toml.");
        }
    }

    // Airy where there is room, then closer, then smaller.
    private CertificateRows? OnOnePage(StatementLine[] lines, double room) =>
        Manners().Select(manner => new CertificateRows(lines, manner.Size, manner.Air, _grid, type))
            .FirstOrDefault(rows => rows.Height <= room);

    private static IEnumerable<(double Size, double Air)> Manners()
    {
        for (var air = MostAir; air >= LeastAir; air -= 0.05)
        {
            yield return (ValueSize, air);
        }

        for (var size = ValueSize; size >= ValueFloor; size -= 0.25)
        {
            yield return (size, LeastAir);
        }
    }

    private void OverPages(PageBuilder page, StatementLine[] lines, double top, CertificateFoot foot)
    {
        CertificateRows rows = new(lines, ValueFloor, LeastAir, _grid, type);
        var bottom = _grid.Bottom - FolioHeight;
        var y = top;

        foreach (var line in rows.Lines)
        {
            if (y + rows.HeightTogether(line) > bottom)
            {
                (page, y) = Continue();
            }

            y = rows.Place(page, y, line);
        }

        if (y + 4 + foot.Height > bottom)
        {
            (page, _) = Continue();
        }

        foot.Place(page, bottom - foot.Height);
        Folios();
    }

    private static void Place(PageBuilder page, CertificateRows rows, IEnumerable<RowLine> lines, double y)
    {
        foreach (var line in lines)
        {
            y = rows.Place(page, y, line);
        }
    }

    // Down the page and each label before its value: so it is copied and read aloud.
    private static PageLayout InReadingOrder(PageLayout page) =>
        page with { Texts = [.. page.Texts.OrderBy(text => Math.Round(text.Baseline, 3)).ThenBy(text => text.X)] };

    private PageBuilder NewPage()
    {
        _pages.Add(new(statement.Page.Width, statement.Page.Height));
        return _pages[^1];
    }

    // A loose second page says what it belongs to.
    private (PageBuilder Page, double Top) Continue()
    {
        var page = NewPage();
        var y = _grid.Top + Caption.Leading;
        page.Add(Caption.EndingAt(_grid.LabelRight, y, _parts.Code.Label, type));
        page.Add(Caption.At(_grid.Axis, y, $"{statement.Code}   {statement.Serial}"));
        page.Rule(_grid.Left, y + 4, _grid.Width);
        return (page, y + 8);
    }

    private void Folios()
    {
        for (var i = 0; i < _pages.Count; i++)
        {
            var folio = string.Create(CultureInfo.InvariantCulture, $"{statement.Code}   {statement.PageWord} {i + 1} / {_pages.Count}");
            _pages[i].Add(Caption.EndingAt(_grid.Right, _grid.Bottom, folio, type));
        }
    }
}
