using EditionRegister.Domain.Text;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using Terminal.Gui.Input;
using Terminal.Gui.Views;
using Line = EditionRegister.Tui.Pages.Line;

namespace EditionRegister.Tui.Screen;

/// <summary>A form over the page: every field in sight, the current one open to be typed into, what is wrong said under it.</summary>
internal sealed partial class FormView : Canvas
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
}
