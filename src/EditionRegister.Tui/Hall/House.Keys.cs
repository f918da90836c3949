using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Hall;

/// <summary>What each key does now.</summary>
internal sealed partial class House
{
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
}
