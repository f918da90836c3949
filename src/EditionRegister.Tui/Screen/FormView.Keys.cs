using EditionRegister.Tui.Asking;

namespace EditionRegister.Tui.Screen;

/// <summary>The keys of a form.</summary>
internal sealed partial class FormView
{
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
