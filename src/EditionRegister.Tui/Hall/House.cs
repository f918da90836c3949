using EditionRegister.Domain;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Hall;

/// <summary>The house with its rooms: which one is entered, what is asked, and what comes of each key. No terminal types: tested without one.</summary>
internal sealed class House
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

    private async Task AfterAsync(Task before, string key)
    {
        await before;
        await TakeAsync(key);
    }

    private Task TakeAsync(string key) => Meant(async () =>
    {
        switch (Asking)
        {
            case Question question:
                await AnswerAsync(question, key);
                break;
            case Choice choice:
                await ChooseAsync(choice, key);
                break;
            case Form:
                break;
            default:
                await OnPageAsync(key);
                break;
        }
    });

    private async Task OnPageAsync(string key)
    {
        var page = Page;

        if (page.IsTyping && page.Moves(key, BodyHeight))
        {
            return;
        }

        if (page.Keys.FirstOrDefault(deed => deed.Key == key) is { } deed && !(key == "Esc" && page is ListPage { Filter.Length: > 0 }))
        {
            Desk.Say("");
            await FollowAsync(await deed.Do());
            return;
        }

        if (!page.Moves(key, BodyHeight))
        {
            await EverywhereAsync(key);
        }
    }

    private async Task EverywhereAsync(string key)
    {
        switch (key)
        {
            case "Esc":
                Desk.Say("");
                await FollowAsync(Back.Once);
                break;
            case "?":
                await FollowAsync(Page is Explained ? Back.Once : new Explained(Page.Title, Page));
                break;
            case "q":
                Asking = Question.YesNo("Leave the register? Everything is saved already.", "leave", () => Task.FromResult<Opening?>(new Leave()));
                break;
            case "u" when Desk.Undo is { } undo:
                Desk.Undo = null;
                Desk.Say(await undo.Do(), Tone.Good);
                await RefreshKeepingMessageAsync();
                break;
            case [>= '1' and <= '9'] when _rooms.Count >= key[0] - '0' && _rooms.Count > 1:
                Desk.Say("");
                await FollowAsync(new GoTo(_rooms[key[0] - '1'].Name));
                break;
            default:
                break;
        }
    }

    private async Task AnswerAsync(Question question, string key)
    {
        if (key == "Esc")
        {
            Asking = null;
            Desk.Say("Nothing was changed.", Tone.Quiet);
        }
        else if (question.Answers.FirstOrDefault(answer => string.Equals(answer.Key, key, StringComparison.OrdinalIgnoreCase)) is { } answer)
        {
            Asking = null;
            Desk.Say("");
            await FollowAsync(await answer.Do());
            await RefreshKeepingMessageAsync();
        }
    }

    private async Task ChooseAsync(Choice choice, string key)
    {
        if (key is "Up" or "Down")
        {
            choice.Move(key == "Up" ? -1 : 1);
            return;
        }

        if (key == "Esc")
        {
            Asking = null;
            return;
        }

        var picked = key == "Enter" && choice.Among.Count > 0 ? choice.Among[choice.At] : choice.Among.FirstOrDefault(one => one.Key == key);

        if (picked is not null)
        {
            Asking = null;
            await FollowAsync(await picked.Do());
            await RefreshKeepingMessageAsync();
        }
    }

    private async Task FollowAsync(Opening? opening)
    {
        switch (opening)
        {
            case Back back:
                if (Here.Back())
                {
                    await Page.RefreshAsync();
                    await FollowAsync(back.Then);
                }

                break;
            case GoTo go:
                Here = _rooms.First(room => room.Name == go.Room);

                if (go.Page is not null)
                {
                    Here.Open(go.Page);
                }

                await Page.RefreshAsync();
                break;
            case Page page:
                Here.Open(page);
                await page.RefreshAsync();
                break;
            case Leave leave:
                Left = leave;
                break;
            case Form form:
                Open(form);
                break;
            case not null:
                Asking = opening;
                break;
        }
    }

    private void Open(Form form)
    {
        if (Desk.Answers.Draft(form) is { } draft)
        {
            form.Fill(draft, all: true);
            form.Problem = "This is what you typed before and did not save.";
        }

        Asking = form;
    }

    private Task RefreshKeepingMessageAsync() => Left is null ? Page.RefreshAsync() : Task.CompletedTask;

    /// <summary>The one place where a refusal becomes words, and a mistake of our own a sentence and a trace.</summary>
    private async Task Meant(Func<Task> what)
    {
        IsBusy = true;

        try
        {
            await what();
        }
        catch (Exception failure)
        {
            Report(failure);
        }
        finally
        {
            IsBusy = false;
            Desk.Redraw();
        }
    }

    private void Report(Exception failure)
    {
        switch (failure)
        {
            case RefusedException refusal:
                Desk.Say(refusal.Message, Tone.Bad);
                break;
            case OperationCanceledException:
                break;
            default:
                Desk.Say(_ownUp(failure), Tone.Bad);
                break;
        }

        Desk.Redraw();
    }
}
