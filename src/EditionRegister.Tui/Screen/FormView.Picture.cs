using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Text;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Pages;
using Line = EditionRegister.Tui.Pages.Line;

namespace EditionRegister.Tui.Screen;

/// <summary>What a form looks like.</summary>
internal sealed partial class FormView
{
    protected override IReadOnlyList<Line> Picture(int width, int height)
    {
        if (_form is not { } form)
        {
            return [];
        }

        var first = FirstShown(form);

        return Box.Around(
            form.Title,
            [
                .. Above(form, width),
                .. form.Fields.Skip(first).Take(FieldRows(form)).Select((field, at) => Row(form, field, first + at)),
                .. Below(form, width),
            ],
            width);
    }

    private Line Row(Form form, Field field, int at)
    {
        var isHere = at == form.At;
        var isWrong = !isHere && field.WasLeft && field.Problem() is not null;
        var label = Line.Of(isHere ? "› " : isWrong ? "! " : "  ", isWrong ? Tone.Bad : Tone.Plain).Then(TextWidth.Pad(TextWidth.Cut(field.Label, LabelColumns(form)), LabelColumns(form)), isHere ? Tone.Strong : Tone.Quiet).Then(" ");

        return field.Words is { } words && isHere ? Words(label, words, field.Text, Viewport.Width - 4) : label.Then(field.Text);
    }

    /// <summary>All the words with the chosen one marked; where they find no room, the chosen one and its place among them.</summary>
    private static Line Words(Line label, IReadOnlyList<string> words, string chosen, int width)
    {
        var all = words.Aggregate(label, (line, word) => line.Then(word == chosen ? $"‹{word}›" : $" {word} ", word == chosen ? Tone.Here : Tone.Quiet));

        return all.Width <= width ? all : label.Then($"‹{chosen}›", Tone.Here).Then($"  {words.ToList().IndexOf(chosen) + 1} of {words.Count}; Left and Right show the others", Tone.Quiet);
    }

    private static int LabelColumns(Form form) => Math.Min(LongestLabel, form.Fields.Max(field => TextWidth.Of(field.Label)));

    private static List<Line> Above(Form form, int width) => form.About.Count == 0 ? [] : [.. form.About.SelectMany(line => Wrap.Of(line, Math.Max(1, width - 4))).Select(line => (Line)line), Line.Empty];

    private List<Line> Below(Form form, int width) => [Scrolled(form), .. Under(form, Math.Max(1, width - 4))];

    private List<Line> Under(Form form, int inner)
    {
        List<Line> lines = [];
        lines.AddRange(Hint(form.Current, inner));
        lines.Add(Known(form, inner));

        if (_escAsked)
        {
            lines.Add(Line.Of("Esc once more leaves the form; what you typed is kept as a draft.", Tone.Warning));
        }

        if (form.Problem is { } problem)
        {
            lines.AddRange(Wrap.Of(problem, inner).Select(line => Line.Of(line, Tone.Bad)));
        }

        if (form.Caution is { } caution)
        {
            lines.AddRange(Wrap.Of(caution, inner).Select(line => Line.Of(line, Tone.Quiet)));
        }

        return lines;
    }

    /// <summary>How the answer is read so far; where it says it plainly, the form of a right one.</summary>
    private static IEnumerable<Line> Hint(Field field, int inner) =>
        field.ReadAs is { } read ? Wrap.Of(IsNotRead(read) ? read : $"read as {read}", inner - 2).Select(line => Line.Of("  " + line, IsNotRead(read) ? Tone.Warning : Tone.Good))
        : [field.Form.Length > 0 && field.Words is null ? Line.Of("  " + field.Form, Tone.Quiet) : Line.Empty];

    private static bool IsNotRead(string read) => read.StartsWith(StatementInWords.NotRead, StringComparison.Ordinal);

    /// <summary>Says that there are fields beyond those in sight.</summary>
    private Line Scrolled(Form form)
    {
        var (above, below) = (FirstShown(form), form.Fields.Count - FirstShown(form) - FieldRows(form));

        return (above, below) switch
        {
            (<= 0, <= 0) => Line.Empty,
            (_, <= 0) => Line.Of($"    {Counted.Of(above, "field")} more above", Tone.Quiet),
            (<= 0, _) => Line.Of($"    {Counted.Of(below, "field")} more below", Tone.Quiet),
            _ => Line.Of($"    {Counted.Of(above, "field")} more above, {below} below", Tone.Quiet),
        };
    }

    private static Line Known(Form form, int width)
    {
        var known = form.Suggestions();

        if (known.Count == 0)
        {
            return Line.Empty;
        }

        var line = Line.Of("  known: ", Tone.Quiet);

        for (var at = 0; at < known.Count && line.Width + TextWidth.Of(known[at]) + 2 <= width; at++)
        {
            line = line.Then(at > 0 ? ", " : "").Then(known[at], at == form.Suggested ? Tone.Here : Tone.Plain);
        }

        return line;
    }

    private int FieldRows(Form form) => Math.Clamp(Viewport.Height - 2 - Above(form, Viewport.Width).Count - Under(form, Math.Max(1, Viewport.Width - 4)).Count - 1, 1, form.Fields.Count);

    private int FirstShown(Form form) => Math.Clamp(form.At - FieldRows(form) + 1, 0, form.Fields.Count - 1);
}
