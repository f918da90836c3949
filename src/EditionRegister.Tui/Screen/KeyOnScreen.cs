using Terminal.Gui.Drivers;
using Terminal.Gui.Input;

namespace EditionRegister.Tui.Screen;

/// <summary>The terminal's keys by the names that pages know.</summary>
internal static class KeyOnScreen
{
    public static string NameOf(Key key) => key.KeyCode switch
    {
        KeyCode.CursorUp => "Up",
        KeyCode.CursorDown => "Down",
        KeyCode.CursorLeft => "Left",
        KeyCode.CursorRight => "Right",
        KeyCode.PageUp => "PageUp",
        KeyCode.PageDown => "PageDown",
        KeyCode.Home => "Home",
        KeyCode.End => "End",
        KeyCode.Enter => "Enter",
        KeyCode.Esc => "Esc",
        KeyCode.Backspace => "Backspace",
        KeyCode.Delete => "Delete",
        KeyCode.Space => "Space",
        KeyCode.Tab => "Tab",
        KeyCode.Tab | KeyCode.ShiftMask => "BackTab",
        >= KeyCode.F1 and <= KeyCode.F12 => key.KeyCode.ToString(),
        _ => Typed(key),
    };

    private static string Typed(Key key) => key is { IsCtrl: false, IsAlt: false } && key.GetPrintableText() is { Length: > 0 } text ? text : key.ToString();
}
