namespace EditionRegister.Tui.Pages;

/// <summary>One page of a room: what it shows and which keys work on it. It knows nothing of terminals.</summary>
internal abstract class Page : Opening
{
    /// <summary>What lies open, in the trade's words: “Harbour”, its numbers.</summary>
    public abstract string Title { get; }

    /// <summary>What the page is for and how it is used, in sentences, for <c>?</c>.</summary>
    public abstract string Explains { get; }

    /// <summary>The keys that work now, the most wanted first.</summary>
    public abstract IReadOnlyList<KeyDeed> Keys { get; }

    /// <summary>Lines above the body; <paramref name="width"/> in columns.</summary>
    public virtual IReadOnlyList<Line> Head(int width) => [];

    /// <summary>Lines below the body.</summary>
    public virtual IReadOnlyList<Line> Foot(int width) => [];

    /// <summary>Reads what it shows, when it opens and whenever it is returned to: another window may have written meanwhile.</summary>
    /// <exception cref="Domain.RefusedException">The register cannot be read.</exception>
    public virtual Task RefreshAsync() => Task.CompletedTask;

    /// <summary>Takes a key no deed is named for: moving about. False where it means nothing here.</summary>
    /// <param name="key">As in <see cref="KeyDeed.Key"/>, and Up, Down, PageUp, PageDown, Home, End, Backspace.</param>
    /// <param name="height">Rows the body has on the screen.</param>
    public virtual bool Moves(string key, int height) => false;

    /// <summary>True while letters are text and not keys.</summary>
    public virtual bool IsTyping => false;
}
