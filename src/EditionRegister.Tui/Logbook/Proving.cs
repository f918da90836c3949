using EditionRegister.Domain;
using EditionRegister.Store.Reading;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.Registers;

namespace EditionRegister.Tui.Logbook;

/// <summary>Recomputes the logbook's hashes beside everything else, and knows how far that is and what came of it.</summary>
internal sealed class Proving(Desk desk)
{
    // Counts the beginnings: an earlier one that is still under way gives up.
    private volatile int _time;
    private long? _begunFor;

    /// <summary>Done when the hashes are recomputed.</summary>
    public Task Underway { get; private set; } = Task.CompletedTask;

    /// <summary>What came of it; null while that is not known.</summary>
    public LogbookProof? Proof { get; private set; }

    /// <summary>The newest copy, as a path from the register's folder on; null where there is none.</summary>
    public string? Backup { get; private set; }

    /// <summary>Why the logbook could not be read to its end, or null.</summary>
    public string? Refused { get; private set; }

    public long Done { get; private set; }

    /// <summary>Begins where the logbook has another length than when it was last recomputed.</summary>
    public void BeginIfGrown(long entries)
    {
        if (_begunFor != entries)
        {
            Begin(entries);
        }
    }

    public void Begin(long entries)
    {
        _time++;
        (_begunFor, Proof, Refused, Done) = (entries, null, null, 0);
        Underway = ProveAsync(_time);
        desk.InBackground(() => Underway);
    }

    private async Task ProveAsync(int time)
    {
        try
        {
            var (proof, backup) = await desk.Store.Aside(
                (register, tell, closing) => (register.LookAround.Unbroken((done, _) => Come(time, done, tell), closing), Backups.Newest(register.Folder)));

            if (time == _time)
            {
                (Proof, Backup) = (proof, backup);
            }
        }
        catch (RefusedException refusal)
        {
            Refused = refusal.Message;
        }
    }

    private void Come(int time, long done, Action<Action> tell)
    {
        if (time != _time)
        {
            throw new OperationCanceledException("Another has begun.");
        }

        tell(() =>
        {
            Done = done;
            desk.Redraw();
        });
    }
}
