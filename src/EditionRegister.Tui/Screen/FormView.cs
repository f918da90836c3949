using EditionRegister.Domain.Text;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using Terminal.Gui.Input;
using Terminal.Gui.Views;
using Line = EditionRegister.Tui.Pages.Line;

namespace EditionRegister.Tui.Screen;

/// <summary>A form over the page: every field in sight, the current one open to be typed into, what is wrong said under it.</summary>
internal sealed class FormView : Canvas
{
    private const int LongestLabel = 26;

    private readonly House _house;
    private readonly TextField _typed = new() { Height = 1, Visible = false };
    private Form? _form;
    private int _shown = -1;
    private bool _isSetting;
    private bool _escAsked;

    public FormView(House house, Pen pen)
        : base(pen)
    {
        _house = house;
        CanFocus = true;
        _typed.SetScheme(pen.Palette.Scheme());
        _typed.KeyDown += (_, key) => key.Handled = Took(KeyOnScreen.NameOf(key));
        _typed.TextChanged += (_, _) => Typed();
        Add(_typed);
    }

    /// <summary>Shows the form that is asked now and puts the cursor into its current field.</summary>
    public void Show(Form form)
    {
        if (!ReferenceEquals(form, _form))
        {
            (_form, _shown, _escAsked) = (form, -1, false);
        }

        PlaceField();
        SetNeedsDraw();
    }

    /// <summary>Lines it needs on a screen of that width; its fields scroll where it gets fewer.</summary>
    public int RowsFor(int width) => _form is null ? 0 : Above(_form, width).Count + _form.Fields.Count + Below(_form, width).Count + 2;

    protected override bool OnKeyDown(Key key) => Took(KeyOnScreen.NameOf(key));

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (_form is not { } form || !IsClick(mouse) || mouse.Position is not { } at)
        {
            return false;
        }

        var clicked = FirstShown(form) + at.Y - 1 - Above(form, Viewport.Width).Count;

        if (clicked < 0 || clicked >= form.Fields.Count)
        {
            return false;
        }

        form.At = clicked;
        Show(form);
        return true;
    }

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

    private static Line Row(Form form, Field field, int at)
    {
        var isHere = at == form.At;
        var isWrong = !isHere && field.WasLeft && field.Problem() is not null;
        var label = Line.Of(isHere ? "› " : isWrong ? "! " : "  ", isWrong ? Tone.Bad : Tone.Plain).Then(TextWidth.Pad(TextWidth.Cut(field.Label, LabelColumns(form)), LabelColumns(form)), isHere ? Tone.Strong : Tone.Quiet).Then(" ");

        return field.Words is null ? label.Then(field.Text)
            : isHere ? field.Words.Aggregate(label, (line, word) => line.Then(word == field.Text ? $"‹{word}›" : $" {word} ", word == field.Text ? Tone.Here : Tone.Quiet))
            : label.Then(field.Text);
    }

    private static int LabelColumns(Form form) => Math.Min(LongestLabel, form.Fields.Max(field => TextWidth.Of(field.Label)));

    private static List<Line> Above(Form form, int width) => form.About.Count == 0 ? [] : [.. form.About.SelectMany(line => Wrap.Of(line, Math.Max(1, width - 4))).Select(line => (Line)line), Line.Empty];

    private List<Line> Below(Form form, int width) => [Scrolled(form), .. Under(form, Math.Max(1, width - 4))];

    private List<Line> Under(Form form, int inner)
    {
        List<Line> lines = [];
        lines.Add(form.Current.Form.Length > 0 && form.Current.Words is null ? Line.Of("  " + form.Current.Form, Tone.Quiet) : Line.Empty);
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

    private void PlaceField()
    {
        if (_form is not { } form)
        {
            return;
        }

        _typed.Visible = form.Current.Words is null;

        if (form.Current.Words is not null)
        {
            _shown = form.At;
            SetFocus();
            return;
        }

        // Frame, blank, pointer and its blank, label, blank.
        _typed.X = 2 + 2 + LabelColumns(form) + 1;
        _typed.Y = 1 + Above(form, Viewport.Width).Count + form.At - FirstShown(form);
        _typed.Width = Math.Max(1, Viewport.Width - 2 - (2 + 2 + LabelColumns(form) + 1));

        if (_shown != form.At || _typed.Text != form.Current.Text)
        {
            _shown = form.At;
            _isSetting = true;
            _typed.Text = form.Current.Text;
            _typed.InsertionPoint = form.Current.Text.Length;
            _isSetting = false;
        }

        _typed.SetFocus();
    }

    private void Typed()
    {
        if (_form is not { } form || _isSetting)
        {
            return;
        }

        form.Current.Text = _typed.Text;
        form.Problem = null;
        form.ForgetSuggestion();
        _escAsked = false;
        SetNeedsDraw();
        _house.Desk.Redraw();
    }

    /// <summary>The form's own keys; false for those that are typing.</summary>
    private bool Took(string key)
    {
        if (_form is not { } form || _house.IsBusy)
        {
            return true;
        }

        switch (key)
        {
            case "Enter" when form.At == form.Fields.Count - 1:
            case "F2":
                _ = _house.SaveAsync(form);
                break;
            case "Enter" or "Tab" or "Down":
                form.Next();
                form.ForgetSuggestion();
                break;
            case "Up" or "BackTab":
                form.Previous();
                form.ForgetSuggestion();
                break;
            case "F3":
                form.TakeSuggestion();
                break;
            case "F4":
                AsLastTime(form);
                break;
            case "Ctrl+U" when form.Current.Words is null:
                _typed.Text = "";
                break;
            case "Esc":
                Leave(form);
                break;
            case "Left" or "Right" or "Space" when form.Current.Words is not null:
                form.Turn(key == "Left" ? -1 : 1);
                break;
            default:
                if (form.Current.Words is not { } words)
                {
                    return false;
                }

                // The first letter of a word picks it.
                form.Current.Text = words.FirstOrDefault(word => word.StartsWith(key, StringComparison.OrdinalIgnoreCase)) ?? form.Current.Text;
                break;
        }

        _house.Desk.Redraw();
        return true;
    }

    private void AsLastTime(Form form)
    {
        if (_house.Desk.Answers.Last(form) is { } last)
        {
            form.Fill(last, all: false);
            form.Problem = null;
        }
        else
        {
            form.Problem = "Nothing was saved by this form since the program was started, so there is no last time yet.";
        }
    }

    private void Leave(Form form)
    {
        if (form.IsTouched && !_escAsked)
        {
            _escAsked = true;
        }
        else
        {
            _escAsked = false;
            _house.LeaveForm(form);
        }
    }
}
