using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace EditionRegister.Tui.Screen;

/// <summary>The whole screen: the head, the page, what is asked over it, what was said, the keys. Lays out and wires.</summary>
internal sealed class MainWindow : Window
{
    public const int LeastWidth = 80;
    public const int LeastHeight = 24;

    private readonly House _house;
    private readonly HeadView _head;
    private readonly BodyView _body;
    private readonly MessageView _message;
    private readonly KeysView _keys;
    private readonly AskingView _asking;
    private readonly FormView _form;
    private readonly TooSmallView _tooSmall;

    public MainWindow(House house, string register, string folder, Pen pen)
    {
        _house = house;
        BorderStyle = LineStyle.None;
        SetScheme(pen.Palette.Scheme());
        _head = new HeadView(house, register, folder, pen);
        _body = new BodyView(house, pen);
        _message = new MessageView(house, pen);
        _keys = new KeysView(house, pen);
        _asking = new AskingView(house, pen);
        _form = new FormView(house, pen);
        _tooSmall = new TooSmallView(pen);
        Add(_head, _body, _message, _keys, _asking, _form, _tooSmall);

        // Esc is the library's key for ending: here it only ever goes back. All keys are ours before they are its own.
        KeyDown += (_, key) => key.Handled |= key == Key.Esc || key == Key.Tab || key == Key.Tab.WithShift || key == Key.F10;
        ViewportChanged += (_, _) => Arrange();
        house.Desk.Redraw = Arrange;
    }

    public override void EndInit()
    {
        base.EndInit();
        Arrange();
    }

    /// <summary>Puts everything in its place for what is open now, and draws it anew.</summary>
    private void Arrange()
    {
        if (_house.Left is not null)
        {
            App?.RequestStop();
            return;
        }

        var (width, height) = (Viewport.Width, Viewport.Height);
        _tooSmall.Visible = width < LeastWidth || height < LeastHeight;
        Put(_tooSmall, 0, 0, width, height);

        if (_tooSmall.Visible)
        {
            SetNeedsDraw();
            return;
        }

        var said = _message.RowsFor(width);
        var keys = _keys.RowsFor(width, height);
        var body = height - HeadView.Rows - said - keys;
        Put(_head, 0, 0, width, HeadView.Rows);
        Put(_body, 0, HeadView.Rows, width, body);
        Put(_message, 0, height - keys - said, width, said);
        Put(_keys, 0, height - keys, width, keys);
        ArrangeAsking(width, HeadView.Rows, body);
        SetNeedsDraw();
    }

    private void ArrangeAsking(int width, int top, int height)
    {
        // What is asked is as wide as a sentence reads well, and lies in the middle.
        var wide = Math.Min(width, 96) - 4;
        _form.Visible = _house.Asking is Form;
        _asking.Visible = _house.Asking is Question or Choice;

        if (_house.Asking is Form form)
        {
            _form.Show(form);
            Put(_form, (width - wide) / 2, top, wide, Math.Min(height, _form.RowsFor(wide)));
            _form.Show(form);
        }
        else if (_asking.Visible)
        {
            Put(_asking, (width - wide) / 2, top, wide, Math.Min(height, _asking.RowsFor(wide)));
            _asking.SetFocus();
        }
        else
        {
            _body.SetFocus();
        }
    }

    private static void Put(View view, int x, int y, int width, int height)
    {
        view.Frame = new System.Drawing.Rectangle(x, y, Math.Max(0, width), Math.Max(0, height));
        view.SetNeedsDraw();
    }
}
