using EditionRegister.Domain;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Hall;

/// <summary>The house with its rooms: which one is entered, what is asked, and what comes of each key. No terminal types: tested without one.</summary>
internal sealed partial class House
{
    private readonly IReadOnlyList<Room> _rooms;
    private readonly Func<Exception, string> _ownUp;
    private Task _under = Task.CompletedTask;

    /// <param name="desk">What the pages have at hand.</param>
    /// <param name="rooms">In the order of their digits; or one alone, where no register is open.</param>
    /// <param name="ownUp">Writes the trace of a mistake of our own away, and answers what to say of it.</param>
    public House(Desk desk, IReadOnlyList<Room> rooms, Func<Exception, string> ownUp)
    {
        (Desk, _rooms, _ownUp) = (desk, rooms, ownUp);
        Here = rooms[0];
        desk.Failed = Report;
    }

    public Desk Desk { get; }

    public IReadOnlyList<Room> Rooms => _rooms;

    public Room Here { get; private set; }

    public Page Page => Here.Page;

    /// <summary>The form, question or choice that lies over the page; null where none does.</summary>
    public Opening? Asking { get; private set; }

    /// <summary>True while a deed is under way; keys pressed meanwhile wait for it.</summary>
    public bool IsBusy { get; private set; }

    /// <summary>When everything the keys so far asked for is done.</summary>
    public Task Settled => _under;

    /// <summary>Set when the program is to end, or to open another register.</summary>
    public Leave? Left { get; private set; }

    /// <summary>Rows the page's body has; the screen says so, and moving by pages goes by it.</summary>
    public int BodyHeight { get; set; } = 19;

    /// <summary>Opens the first page.</summary>
    public Task StartAsync() => Meant(() => Page.RefreshAsync());

    /// <summary>What a key does now; keys pressed while a deed is under way are taken in their order.</summary>
    public Task PressAsync(string key) => _under = _under.IsCompleted ? TakeAsync(key) : AfterAsync(_under, key);

    /// <summary>A form was filled in and is to be saved.</summary>
    public Task SaveAsync(Form form) => _under = Meant(async () =>
    {
        if (await form.SaveAsync() is { } saved)
        {
            Asking = null;
            Finish(form, saved);
            await FollowAsync(saved.Next);
            await RefreshKeepingMessageAsync();
        }
    });

    private void Finish(Form form, Saved saved)
    {
        if (saved.IsHalfway)
        {
            Desk.Answers.Keep(form);
            Desk.Say(saved.Sentence);
            return;
        }

        Desk.Done(form, saved);
    }

    /// <summary>A form was left: what was typed is kept.</summary>
    public void LeaveForm(Form form)
    {
        if (form.IsTouched)
        {
            Desk.Answers.Keep(form);
            Desk.Say("Nothing was saved. What you typed is kept, and stands there when you open this form again.", Tone.Quiet);
        }

        Asking = null;
    }

    /// <summary>Writes the trace of a mistake of our own away, and answers what to say of it.</summary>
    public string OwnUp(Exception failure) => _ownUp(failure);

    /// <summary>Goes to a room, as its digit does.</summary>
    public Task GoAsync(RoomName room) => _under = Meant(() => FollowAsync(new GoTo(room)));

    /// <summary>The keys that work everywhere, for the lowest line.</summary>
    public IReadOnlyList<(string Key, string Does)> Everywhere()
    {
        List<(string, string)> keys = [];

        // Letters and digits are what is typed there, and no keys.
        if (Page.IsTyping)
        {
            return keys;
        }

        if (Desk.Undo is { } undo)
        {
            keys.Add(("u", $"undo {undo.What}"));
        }

        if (_rooms.Count > 1)
        {
            keys.Add(("1-7", "rooms"));
        }

        if (Page is ListPage { FindsIn: not null })
        {
            keys.Add(("/", "filter"));
        }

        keys.Add(("?", "explain"));
        keys.Add(("q", "leave"));

        return keys;
    }
}
