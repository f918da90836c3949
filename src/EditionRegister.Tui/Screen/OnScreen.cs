namespace EditionRegister.Tui.Screen;

/// <summary>Runs things on the thread that draws. Until the screen is there they are held back, so that reading can begin while the terminal is still asked what it can do.</summary>
internal sealed class OnScreen(Action<Action> invoke)
{
    private readonly Lock _lock = new();
    private readonly List<Action> _held = [];
    private bool _isThere;

    public void Run(Action action)
    {
        lock (_lock)
        {
            if (!_isThere)
            {
                _held.Add(action);
                return;
            }
        }

        invoke(action);
    }

    /// <summary>The screen is there: what was held back is run, in its order.</summary>
    public void Begin()
    {
        List<Action> held;

        lock (_lock)
        {
            _isThere = true;
            held = [.. _held];
            _held.Clear();
        }

        held.ForEach(invoke);
    }
}
