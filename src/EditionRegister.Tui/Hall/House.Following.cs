using EditionRegister.Domain;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Hall;

/// <summary>What comes of a key: pages that open, rooms that are entered, refusals that become words.</summary>
internal sealed partial class House
{
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
