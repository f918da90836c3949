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
    private const double SmallestTitle = 13;
    private const int MostTitleLines = 3;

    /// <returns>Where the rows begin, and those of the head's lines that are too long for it and join the rows.</returns>
    public (double Bottom, IReadOnlyList<StatementLine> TooLong) Place(PageBuilder page, string heading, CertificateParts parts)
    {
        List<StatementLine> tooLong = [];
        var y = PlaceHeading(page, heading);

        y = PlaceTitle(page, y + 12, parts.Title, out var baseline) ?? TooLong(parts.Title, y);
        _ = PlaceNumber(page, baseline, parts.Number) ?? TooLong(parts.Number, y);
        y = PlaceMaker(page, y, parts.Maker) ?? TooLong(parts.Maker, y);

        return (y + 5, tooLong);

        double TooLong(StatementLine? line, double at)
        {
            tooLong.AddRange(line is null ? [] : [line]);
            return at;
        }
    }

    private double PlaceHeading(PageBuilder page, string heading)
    {
        var y = grid.Top;

        foreach (var line in Heading.Wrap(heading.ToUpperInvariant(), grid.ValueWidth, type))
        {
            page.Add(Heading.At(grid.Axis, y += Heading.Leading, line));
        }

        page.Rule(grid.Left, y + 4, grid.Width);
        return y + 4;
    }

    private double? PlaceTitle(PageBuilder page, double y, StatementLine? title, out double baseline)
    {
        baseline = y + 9;

        if (title is null || Fitting(title.Value) is not { } fitting)
        {
            return null;
        }

        baseline = y + (fitting.Setting.Size * Typesetter.Point);
        var at = baseline - fitting.Setting.Leading;

        foreach (var line in fitting.Lines)
        {
            page.Add(fitting.Setting.At(grid.Axis, at += fitting.Setting.Leading, line));
        }

        return at + 3.5;
    }

    // One large line, else two or three smaller ones.
    private (Setting Setting, IReadOnlyList<string> Lines)? Fitting(string title)
    {
        for (var lines = 1; lines <= MostTitleLines; lines++)
        {
            var floor = lines switch { 1 => 21, 2 => 16, _ => SmallestTitle };

            for (var size = LargestTitle; size >= floor; size -= 0.5)
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
    private double? PlaceNumber(PageBuilder page, double baseline, StatementLine? number)
    {
        if (number is null)
        {
            return null;
        }

        for (double size = 20; size >= 11; size -= 0.5)
        {
            if (Number(size).Width(number.Value, type) <= grid.LabelWidth)
            {
                page.Add(Number(size).EndingAt(grid.LabelRight, baseline, number.Value, type));
                page.Add(Caption.EndingAt(grid.LabelRight, baseline - (size * CapitalHeight * Typesetter.Point) - 3, number.Label, type));
                return baseline;
            }
        }

        return null;
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
