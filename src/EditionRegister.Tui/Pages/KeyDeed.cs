namespace EditionRegister.Tui.Pages;

/// <summary>A key that works now: what it does in a word or two, and the doing.</summary>
/// <param name="Key">A character as typed, or Enter, Space, Esc, Delete, Tab, Left, Right.</param>
/// <param name="Does">A verb and its object, as the keys line shows it.</param>
/// <param name="Do">What comes of it.</param>
internal sealed record KeyDeed(string Key, string Does, Func<Task<Opening?>> Do)
{
    /// <summary>What <c>?</c> says of the key, where a few words are not enough.</summary>
    public string? Explained { get; init; }

    public static KeyDeed Opens(string key, string does, Func<Opening?> opening) => new(key, does, () => Task.FromResult(opening()));

    public static KeyDeed Doing(string key, string does, Action deed) => new(key, does, () =>
    {
        deed();
        return Task.FromResult<Opening?>(null);
    });
}
