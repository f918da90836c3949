using EditionRegister.Domain.Text;

namespace EditionRegister.Tui.Pages;

/// <summary>A page drawn as lines for a screen of a given size, and where its body stands in them.</summary>
internal sealed record PagePicture(IReadOnlyList<Line> Lines, int BodyTop, int BodyHeight)
{
    // However much there is to say above and below, some of the body is always in sight.
    private const int LeastBody = 5;

    public static PagePicture Of(Page page, int width, int height)
    {
        List<Line> top = [.. page.Head(width)];
        List<Line> foot = [.. page.Foot(width)];

        if (page is ListPage list)
        {
            top.AddRange(FilterLine(list, width));
            top.Add(ListLines.Heading(list.Rows, width));
        }

        var room = Math.Max(0, height - LeastBody);
        top = [.. top.Take(Math.Max(room, page is ListPage ? 2 : 0))];
        foot = [.. foot.Take(Math.Max(0, room - top.Count))];
        var body = Math.Max(1, height - top.Count - foot.Count);
        List<Line> lines = [.. top, .. Body(page, width, body)];

        while (lines.Count < height - foot.Count)
        {
            lines.Add(Line.Empty);
        }

        return new PagePicture([.. lines, .. foot], top.Count, body);
    }

    private static IEnumerable<Line> Body(Page page, int width, int height) => page switch
    {
        ListPage { Rows.Count: 0 } list => Wrap.Of(list.Empty, width).Select(line => Line.Of(line, Tone.Quiet)).Take(height),
        ListPage list => ListLines.InSight(list, width, height),
        TrayPage tray => WithCue(tray.InSight(width, height), height, () => tray.HasMoreBelow, () => tray.InSight(width, height - 1)),
        TextPage text => WithCue(text.InSight(width, height), height, () => text.HasMoreBelow, () => text.InSight(width, height - 1)),
        _ => [],
    };

    /// <summary>Where there is more than the screen holds, its last line says so.</summary>
    private static IReadOnlyList<Line> WithCue(IReadOnlyList<Line> inSight, int height, Func<bool> hasMore, Func<IReadOnlyList<Line>> shorter)
    {
        if (height < 2 || !hasMore())
        {
            return inSight;
        }

        var fewer = shorter();

        return hasMore() ? [.. fewer, Line.Of("   more below", Tone.Quiet)] : fewer;
    }

    private static IEnumerable<Line> FilterLine(ListPage list, int width)
    {
        var count = list.Rows.Count == 0 ? "" : list.Rows.HasMore ? $"{list.Current + 1} of more than {list.Rows.Count - 1}" : $"{list.Current + 1} of {list.Rows.Count}";

        if (list.FindsIn is null && list.Rows.Count == 0)
        {
            yield break;
        }

        var typed = list.IsFiltering ? Line.Of("Find: ", Tone.Key).Then(list.Filter + "_", Tone.Strong)
            : list.Filter.Length > 0 ? Line.Of("Found by ", Tone.Quiet).Then(list.Filter, Tone.Strong)
            : list.FindsIn is { } finds ? Line.Of($"/ finds by {finds}", Tone.Quiet)
            : Line.Empty;
        var way = list.Filter.Length > 0 && !list.IsFiltering ? "   Esc shows all" : "";
        var meaning = list.Filter.Length > 0 && list.Understood is { } understood ? $"   as {understood}" : "";

        // Where there is no room for all of it, what was understood is left out first.
        typed = typed.Width + TextWidth.Of(meaning + way) + count.Length < width ? typed.Then(meaning, Tone.Quiet) : typed;
        typed = way.Length > 0 ? typed.Then(way, Tone.Quiet) : typed;

        yield return typed.Width + count.Length + 1 > width ? typed : typed.Then(new string(' ', width - typed.Width - count.Length)).Then(count, Tone.Quiet);
    }
}
