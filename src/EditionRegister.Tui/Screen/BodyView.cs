using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using Terminal.Gui.Input;

namespace EditionRegister.Tui.Screen;

/// <summary>The page that lies open; it takes the keys and passes them on.</summary>
internal sealed class BodyView : Canvas
{
    private readonly House _house;
    private PagePicture? _picture;
    private Page? _failed;
    private string _said = "";

    public BodyView(House house, Pen pen)
        : base(pen)
    {
        _house = house;
        CanFocus = true;
    }

    protected override IReadOnlyList<Line> Picture(int width, int height)
    {
        try
        {
            _picture = PagePicture.Of(_house.Page, width, height);
            _house.BodyHeight = _picture.BodyHeight;

            return _picture.Lines;
        }
        catch (Exception failure)
        {
            // A page that cannot be drawn must not take the others with it; it is owned up to once, not at every repaint.
            _picture = null;
            return [.. Wrap.Of(OwnedUp(failure), Math.Max(1, width)).Select(line => Line.Of(line, Tone.Bad)), Line.Empty, "Esc goes back, 1 to 7 go to a room."];
        }
    }

    private string OwnedUp(Exception failure)
    {
        if (!ReferenceEquals(_failed, _house.Page))
        {
            (_failed, _said) = (_house.Page, _house.OwnUp(failure));
        }

        return _said;
    }

    protected override bool OnKeyDown(Key key)
    {
        _ = _house.PressAsync(KeyOnScreen.NameOf(key));
        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.Flags.HasFlag(MouseFlags.WheeledUp) || mouse.Flags.HasFlag(MouseFlags.WheeledDown))
        {
            _ = _house.PressAsync(mouse.Flags.HasFlag(MouseFlags.WheeledUp) ? "Up" : "Down");
            return true;
        }

        if ((!IsClick(mouse) && !IsDoubleClick(mouse)) || mouse.Position is not { } at || _picture is null)
        {
            return false;
        }

        Point(at.X, at.Y - _picture.BodyTop);

        if (IsDoubleClick(mouse))
        {
            _ = _house.PressAsync("Enter");
        }

        SetNeedsDraw();
        return true;
    }

    private void Point(int column, int line)
    {
        switch (_house.Page)
        {
            case ListPage list when line >= 0 && list.Top + line < list.Rows.Count:
                list.Current = list.Top + line;
                break;
            case TrayPage tray when line >= 0 && tray.CellAt(column, line) is { } cell:
                tray.Current = cell;
                break;
            default:
                break;
        }
    }
}
