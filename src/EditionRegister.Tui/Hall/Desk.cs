using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Hall;

/// <summary>What every page has at hand: the register's queue, the line to say something in, the marked sheets, earlier answers.</summary>
/// <param name="store">The queue to the open register; null where none is open yet.</param>
/// <param name="time">The clock.</param>
internal sealed class Desk(StoreQueue? store, TimeProvider time)
{
    /// <exception cref="InvalidOperationException">No register is open.</exception>
    public StoreQueue Store => store ?? throw new InvalidOperationException("No register is open.");

    public TimeProvider Time { get; } = time;

    /// <summary>Called when something on the screen has changed outside a key press.</summary>
    public Action Redraw { get; set; } = () => { };

    /// <summary>What the line above the keys says.</summary>
    public string Message { get; private set; } = "";

    public Tone MessageTone { get; private set; }

    /// <summary>Sheets marked in any room, by their codes as shown, in the order in which they were marked.</summary>
    public MarkedSheets Marked { get; } = new();

    public Answers Answers { get; } = new();

    public WrittenFiles Written { get; } = new();

    /// <summary>What <c>u</c> undoes, or null.</summary>
    public Undoing? Undo { get; set; }

    /// <summary>Takes what failed outside a key press: work in the background.</summary>
    public Action<Exception> Failed { get; set; } = _ => { };

    /// <summary>Today where the user sits.</summary>
    public DateOnly Today => DateOnly.FromDateTime(Time.GetLocalNow().DateTime);

    public void Say(string sentence, Tone tone = Tone.Plain) => (Message, MessageTone) = (sentence, tone);

    /// <summary>What a form asked for is in the register: says so, offers its undoing, and forgets the draft.</summary>
    public void Done(Form form, Saved saved)
    {
        Answers.Done(form);
        Say(saved.Sentence, Tone.Good);
        Undo = saved.Undo;
    }

    /// <summary>Says how far long work has come; may be called while it is under way on the drawing thread only.</summary>
    public void Progress(string sentence)
    {
        Say(sentence, Tone.Quiet);
        Redraw();
    }

    /// <summary>Runs work nobody waits for; what fails in it is reported, and the screen drawn anew when it ends.</summary>
    public async void InBackground(Func<Task> work)
    {
        try
        {
            await work();
            Redraw();
        }
        catch (OperationCanceledException)
        {
            // The register was closed meanwhile.
        }
        catch (Exception failure)
        {
            Failed(failure);
        }
    }
}
