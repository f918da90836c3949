namespace EditionRegister.Tui.Asking;

/// <summary>One thing a form asks for: typed, with the form of a right answer under it, or one of a few words.</summary>
internal sealed class Field
{
    public Field(string label, string text = "")
    {
        Label = label;
        Text = AsGiven = text;
    }

    /// <summary>As the form shows it; also how the form's answers are called by.</summary>
    public string Label { get; }

    public string Text { get; set; }

    /// <summary>It has been come past: what is wrong with it may be pointed at.</summary>
    public bool WasLeft { get; set; }

    /// <summary>What stood there when the form opened.</summary>
    public string AsGiven { get; }

    /// <summary>The form of a right answer: “2026-03-01, 2026-03 or 2026”.</summary>
    public string Form { get; init; } = "";

    /// <summary>An empty answer will not do.</summary>
    public bool IsNeeded { get; init; }

    /// <summary>The words to choose among, where nothing else can be the answer; null where it is typed.</summary>
    public IReadOnlyList<string>? Words { get; init; }

    /// <summary>What is wrong with the answer, in a sentence, or null.</summary>
    public Func<string, string?> Wrong { get; init; } = _ => null;

    /// <summary>How the answer would be read, where something is read into it; else null. Shown while it is typed.</summary>
    public Func<string, string?> Reads { get; init; } = _ => null;

    /// <summary>What the register knows that may be meant, the likeliest first.</summary>
    public Func<string, IReadOnlyList<string>> Known { get; init; } = _ => [];

    /// <summary>The answer without blanks around it; null where there is none.</summary>
    public string? Answer => string.IsNullOrWhiteSpace(Text) ? null : Text.Trim();

    /// <summary>How the answer is read so far; null where it says it plainly itself, or nothing is read.</summary>
    public string? ReadAs => Answer is { } answer ? Reads(answer) : null;

    /// <summary>What keeps the answer from being taken, in words, or null.</summary>
    public string? Problem() =>
        Answer is null ? (IsNeeded ? $"{Label} is needed{(Form.Length > 0 ? $": {Form}" : "")}." : null)
        : Words is { } words && !words.Contains(Text) ? $"{Label} is one of {string.Join(", ", words)}."
        : Wrong(Answer);

    /// <summary>A field whose answer is one of a few words; the first unless said.</summary>
    public static Field OneOf(string label, IReadOnlyList<string> words, string? given = null) =>
        new(label, given ?? words[0]) { Words = words, Form = string.Join(" · ", words) };

    public static Field YesNo(string label, bool given) => OneOf(label, ["yes", "no"], given ? "yes" : "no");
}
