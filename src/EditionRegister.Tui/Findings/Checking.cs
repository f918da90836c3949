using EditionRegister.Tui.Hall;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Checking;

namespace EditionRegister.Tui.Findings;

/// <summary>Checks the register beside everything else, and knows how far that is and what came of the last time.</summary>
internal sealed class Checking(Desk desk)
{
    // Counts the beginnings: an earlier one that is still under way gives up.
    private volatile int _time;

    /// <summary>Done when the register is checked.</summary>
    public Task Underway { get; private set; } = Task.CompletedTask;

    /// <summary>True while a check is under way.</summary>
    public bool IsUnderway { get; private set; }

    /// <summary>What came of the last check that came to its end; null before the first.</summary>
    public Checked? Last { get; set; }

    /// <summary>How many works are checked and how many there are; null while the file itself is.</summary>
    public (long Done, long All)? Works { get; private set; }

    /// <param name="finished">Called on the drawing thread when it has come to its end.</param>
    public void Begin(Action finished)
    {
        _time++;
        (IsUnderway, Works) = (true, null);
        Underway = CheckAsync(_time, finished);
        desk.InBackground(() => Underway);
    }

    private async Task CheckAsync(int time, Action finished)
    {
        try
        {
            var found = await desk.Store.Aside((register, tell, closing) => Check(register, (done, all) => Come(time, done, all, tell), closing));

            if (time == _time)
            {
                Last = found;
            }
        }
        finally
        {
            if (time == _time)
            {
                IsUnderway = false;
                finished();
            }
        }
    }

    private static Checked Check(Register register, Action<long, long> come, CancellationToken closing)
    {
        var check = register.CheckRegister;
        FindingsGathered gathered = new();

        foreach (var finding in ReadableFindings.Of(check, come))
        {
            closing.ThrowIfCancellationRequested();
            gathered.Add(finding);
        }

        return gathered.Done(ReadableFindings.Head(register, check));
    }

    private void Come(int time, long done, long all, Action<Action> tell)
    {
        if (time != _time)
        {
            throw new OperationCanceledException("Another has begun.");
        }

        tell(() =>
        {
            Works = (done, all);
            desk.Redraw();
        });
    }
}
