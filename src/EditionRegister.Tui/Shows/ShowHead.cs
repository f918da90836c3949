using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Shows;

namespace EditionRegister.Tui.Shows;

/// <summary>What is recorded of a show, above its list; what is not known takes no line.</summary>
internal static class ShowHead
{
    private const int LabelColumns = 8;

    public static IReadOnlyList<Line> Of(ShowSeen seen, int width)
    {
        var show = seen.Show;

        return
        [
            Line.Of(string.Join(", ", new[] { show.Kind == "other" ? "show" : show.Kind, ShowsShown.When(show), Counted.Sheets(seen.Listed.Count) + " listed" }.OfType<string>()), Tone.Strong),
            .. Fact("Place", show.Place is { } place ? seen.Book.PathOf(place) : null, width),
            .. Fact("Host", show.Host is { } host ? seen.Book.NameOf(host) : null, width),
            .. Fact("Note", show.Note, width),
            Line.Empty,
        ];
    }

    private static IEnumerable<Line> Fact(string label, string? value, int width) => string.IsNullOrWhiteSpace(value)
        ? []
        : Wrap.Of(value, width - LabelColumns).Select((line, at) => Line.Fact(at == 0 ? label : "", line, LabelColumns));
}
