using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using Terminal.Gui.Input;

namespace EditionRegister.Tui.Screen;

/// <summary>A question or a choice over the page; it takes the keys while it stands.</summary>
internal sealed class AskingView : Canvas
{
    private readonly House _house;

    public AskingView(House house, Pen pen)
        : base(pen)
    {
        _house = house;
        CanFocus = true;
    }

    /// <summary>Lines it needs on a screen of that width.</summary>
    public int RowsFor(int width) => Framed(width).Count;

    protected override IReadOnlyList<Line> Picture(int width, int height) => Framed(width, height);

    protected override bool OnKeyDown(Key key)
    {
        _ = _house.PressAsync(KeyOnScreen.NameOf(key));
        return true;
    }

    private IReadOnlyList<Line> Framed(int width, int height = int.MaxValue) => _house.Asking switch
    {
        Question question => Box.Around("?", [.. Asked(question, width - 4).Take(Math.Max(1, height - 2))], width),
        Choice choice => Box.Around(choice.Title, [.. Among(choice, height - 2)], width),
        _ => [],
    };

    private static IEnumerable<Line> Asked(Question question, int width)
    {
        foreach (var line in Wrap.Of(question.Asked, Math.Max(1, width)))
        {
            yield return Line.Of(line, Tone.Strong);
        }

        yield return Line.Empty;

        foreach (var line in question.Shown)
        {
            yield return line;
        }

        if (question.Shown.Count > 0)
        {
            yield return Line.Empty;
        }

        foreach (var answer in question.Answers)
        {
            yield return Line.Of($" {answer.Key}  ", Tone.Key).Then(answer.Means);
        }
    }

    private static IEnumerable<Line> Among(Choice choice, int height)
    {
        var isClipped = choice.Among.Count > height;
        var rows = isClipped ? height - 1 : height;
        var top = Math.Max(0, choice.At - rows + 1);
        var lines = choice.Among.Select((one, at) => Line.Of(at == choice.At ? "› " : "  ", at == choice.At ? Tone.Here : Tone.Plain)
            .Then(one.Key is null ? "" : one.Key + "  ", at == choice.At ? Tone.Here : Tone.Key)
            .Then(one.Shown, at == choice.At ? Tone.Here : Tone.Plain)).Skip(top).Take(rows);

        return isClipped ? lines.Append(Line.Of(top + rows < choice.Among.Count ? "   more below" : "   the end", Tone.Quiet)) : lines;
    }
}
