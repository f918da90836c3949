using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Asking;

/// <summary>One of several things to be picked from a short list.</summary>
internal sealed class Choice(string title, IReadOnlyList<Choosable> among) : Opening
{
    public string Title { get; } = title;

    public IReadOnlyList<Choosable> Among { get; } = among;

    public int At { get; private set; }

    public void Move(int step) => At = Among.Count == 0 ? 0 : Math.Clamp(At + step, 0, Among.Count - 1);
}

/// <summary>One thing to pick, with its key where it has one.</summary>
internal sealed record Choosable(string? Key, string Shown, Func<Task<Opening?>> Do)
{
    public static Choosable Opens(string? key, string shown, Func<Opening?> opening) => new(key, shown, () => Task.FromResult(opening()));
}
