using EditionRegister.Tui.Asking;

namespace EditionRegister.Tui.Hall;

/// <summary>Earlier answers to forms, by the form's name: the last ones saved, and drafts that were left.</summary>
internal sealed class Answers
{
    private readonly Dictionary<string, IReadOnlyDictionary<string, string>> _last = new(StringComparer.Ordinal);
    private readonly Dictionary<string, IReadOnlyDictionary<string, string>> _drafts = new(StringComparer.Ordinal);

    public IReadOnlyDictionary<string, string>? Last(Form form) => _last.GetValueOrDefault(form.Name);

    public IReadOnlyDictionary<string, string>? Draft(Form form) => _drafts.GetValueOrDefault(form.Name + "\n" + form.Title);

    public void Keep(Form form) => _drafts[form.Name + "\n" + form.Title] = form.Answers();

    /// <summary>Takes what the register knows for the last answers, as when the program was started anew since.</summary>
    /// <param name="form">The form's name.</param>
    /// <param name="answers">By the labels of its fields.</param>
    public void Remember(string form, IReadOnlyDictionary<string, string> answers) => _last[form] = answers;

    public void Done(Form form)
    {
        _last[form.Name] = form.Answers();
        _drafts.Remove(form.Name + "\n" + form.Title);
    }
}
