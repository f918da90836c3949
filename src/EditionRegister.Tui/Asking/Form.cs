using EditionRegister.Domain;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Asking;

/// <summary>What came of a form that was saved: what is now in the register, in a sentence, and what opens next.</summary>
internal sealed record Saved(string Sentence, Opening? Next = null)
{
    /// <summary>How it is undone by a correcting entry; null where it cannot be.</summary>
    public Undoing? Undo { get; init; }

    /// <summary>True where <see cref="Next"/> asks something before anything is saved: what was typed is kept as a draft until then.</summary>
    public bool IsHalfway { get; init; }
}

/// <summary>What <c>u</c> undoes: named in a few words, and the undoing, which answers in a sentence.</summary>
internal sealed record Undoing(string What, Func<Task<string>> Do);

/// <summary>Several things asked at once. What is typed is never lost: it is kept as a draft until it is saved.</summary>
internal sealed class Form(string title, IReadOnlyList<Field> fields, Func<Form, Task<Saved>> save) : Opening
{
    private int _suggestion = -1;
    private string _suggestedFor = "";

    public string Title { get; } = title;

    public IReadOnlyList<Field> Fields { get; } = fields;

    /// <summary>A line above the fields that says what this is about.</summary>
    public IReadOnlyList<string> About { get; init; } = [];

    /// <summary>Under which drafts and last answers are kept; the title unless said.</summary>
    public string Name { get; init; } = title;

    /// <summary>Labels of fields that <em>as last time</em> leaves alone: what is this sheet's or this person's own.</summary>
    public IReadOnlyList<string> OwnEachTime { get; init; } = [];

    /// <summary>The usual caution where money, law or children are touched; shown at the foot.</summary>
    public string? Caution { get; init; }

    public int At { get; set; }

    public Field Current => Fields[At];

    /// <summary>What is wrong, in a sentence, until it is put right.</summary>
    public string? Problem { get; set; }

    public bool IsTouched => Fields.Any(one => one.Text != one.AsGiven);

    /// <summary>The answer under a label; null where there is none.</summary>
    /// <exception cref="InvalidOperationException">The form has no such field.</exception>
    public string? this[string label] => FieldOf(label).Answer;

    public Field FieldOf(string label) => Fields.First(field => field.Label == label);

    public bool IsYes(string label) => this[label] == "yes";

    /// <summary>To the next field, or false where this is the last.</summary>
    public bool Next()
    {
        Current.WasLeft = true;
        Problem = Current.Problem();

        if (At == Fields.Count - 1)
        {
            return false;
        }

        At++;
        return true;
    }

    public bool Previous()
    {
        if (At == 0)
        {
            return false;
        }

        Current.WasLeft = true;
        At--;
        return true;
    }

    /// <summary>Another of the words, for a field that has them.</summary>
    public void Turn(int step)
    {
        if (Current.Words is { } words)
        {
            var at = Math.Max(0, words.ToList().IndexOf(Current.Text));
            Current.Text = words[(at + step + words.Count) % words.Count];
        }
    }

    /// <summary>What the register knows for the current field, as typed so far.</summary>
    public IReadOnlyList<string> Suggestions() => Current.Words is null ? Current.Known(_suggestion >= 0 ? _suggestedFor : Current.Text) : [];

    /// <summary>Which of the suggestions stands in the field, or -1.</summary>
    public int Suggested => _suggestion;

    /// <summary>Puts the next suggestion into the field.</summary>
    public void TakeSuggestion()
    {
        if (_suggestion < 0)
        {
            _suggestedFor = Current.Text;
        }

        var known = Current.Known(_suggestedFor);

        if (known.Count > 0)
        {
            _suggestion = (_suggestion + 1) % known.Count;
            Current.Text = known[_suggestion];
        }
    }

    /// <summary>Something was typed or another field entered: suggestions begin anew.</summary>
    public void ForgetSuggestion() => _suggestion = -1;

    /// <summary>Fills in what was answered the last time, but for what is each time its own.</summary>
    public void Fill(IReadOnlyDictionary<string, string> answers, bool all)
    {
        ArgumentNullException.ThrowIfNull(answers);

        foreach (var field in Fields.Where(field => all || !OwnEachTime.Contains(field.Label)))
        {
            field.Text = answers.GetValueOrDefault(field.Label, field.Text);
        }
    }

    public IReadOnlyDictionary<string, string> Answers() => Fields.ToDictionary(field => field.Label, field => field.Text, StringComparer.Ordinal);

    /// <summary>Saves, or stands at the first field that is not right, or says what the register refused; then null.</summary>
    public async Task<Saved?> SaveAsync()
    {
        for (var at = 0; at < Fields.Count; at++)
        {
            if (Fields[at].Problem() is { } problem)
            {
                (At, Problem) = (at, problem);
                return null;
            }
        }

        try
        {
            return await save(this);
        }
        catch (RefusedException refusal)
        {
            Problem = refusal.Message;
            return null;
        }
    }
}
