using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents.Drawing;
using EditionRegister.Formats.Documents.Layout;
using static EditionRegister.Formats.Documents.Certificates.CertificateSettings;

namespace EditionRegister.Formats.Documents.Certificates;

/// <summary>The head of the first page: heading, the pencilled number beside the title, the maker beneath.</summary>
internal sealed class CertificateHead(CertificateGrid grid, Typesetter type)
{
    // Of an upright capital, in ems: what stands beside it is set to its top.
    private const double CapitalHeight = 0.71;

    private const double LargestTitle = 27;

    // Points, for a title of one line, of two, and so on.
    private static readonly double[] TitleFloors = [21, 16, 14, 13, 12];

    /// <returns>Where the rows begin, and what is too long for the head and joins the rows.</returns>
    public (double Bottom, IReadOnlyList<StatementLine> TooLong) Place(PageBuilder page, string heading, CertificateParts parts)
    {
        var y = PlaceHeading(page, heading);
        var title = PlaceTitle(page, y + 12, parts.Title);

        // The number stands beside the title or not at all.
        var number = title is { } placed && PlaceNumber(page, placed.Baseline, parts.Number);
        y = title?.Bottom ?? y + 4;
        var maker = PlaceMaker(page, y, parts.Maker);

        StatementLine?[] tooLong = [title is null ? parts.Title : null, maker is null ? parts.Maker : null, number ? null : parts.Number];
        return ((maker ?? y) + 5, [.. tooLong.OfType<StatementLine>()]);
    }

    private double PlaceHeading(PageBuilder page, string heading)
    {
        var y = grid.Top;

        foreach (var line in Heading.Wrap(heading, grid.ValueWidth, type))
        {
            page.Add(Heading.At(grid.Axis, y += Heading.Leading, line));
        }

        page.Rule(grid.Left, y + 4, grid.Width);
        return y + 4;
    }

    private (double Baseline, double Bottom)? PlaceTitle(PageBuilder page, double y, StatementLine? title)
    {
        if (title is null || Fitting(title.Value) is not { } fitting)
        {
            return null;
        }

        var baseline = y + (fitting.Setting.Size * Typesetter.Point);
        var at = baseline - fitting.Setting.Leading;

        foreach (var line in fitting.Lines)
        {
            page.Add(fitting.Setting.At(grid.Axis, at += fitting.Setting.Leading, line));
        }

        return (baseline, at + 3.5);
    }

    // One large line, else several smaller ones.
    private (Setting Setting, IReadOnlyList<string> Lines)? Fitting(string title)
    {
        for (var lines = 1; lines <= TitleFloors.Length; lines++)
        {
            for (var size = LargestTitle; size >= TitleFloors[lines - 1]; size -= 0.5)
            {
                var setting = Title(size);

                if (setting.WrapWhole(title, grid.ValueWidth, type) is { } wrapped && wrapped.Count <= lines)
                {
                    return (setting, wrapped);
                }
            }
        }

        return null;
    }

    // Right against the axis, on the title's line: the sheet's number is what the eye should find next.
    private bool PlaceNumber(PageBuilder page, double baseline, StatementLine? number)
    {
        for (double size = 20; number is not null && size >= 11; size -= 0.5)
        {
            if (Number(size).Width(number.Value, type) <= grid.LabelWidth && Caption.Width(number.Label, type) <= grid.LabelWidth)
            {
                page.Add(Number(size).EndingAt(grid.LabelRight, baseline, number.Value, type));
                page.Add(Caption.EndingAt(grid.LabelRight, baseline - (size * CapitalHeight * Typesetter.Point) - 3, number.Label, type));
                return true;
            }
        }

        return false;
    }

    private double? PlaceMaker(PageBuilder page, double y, StatementLine? maker)
    {
        if (maker is null || Maker.WrapWhole(maker.Value, grid.ValueWidth, type) is not { Count: <= 3 } lines)
        {
            return null;
        }

        foreach (var line in lines)
        {
            page.Add(Maker.At(grid.Axis, y += Maker.Leading, line));
        }

        page.Add(Caption.EndingAt(grid.LabelRight, y - ((lines.Count - 1) * Maker.Leading), maker.Label, type));

        return y + 3;
    }
}
