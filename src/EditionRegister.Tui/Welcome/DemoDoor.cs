using EditionRegister.Domain;
using EditionRegister.Store;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Demo;

namespace EditionRegister.Tui.Welcome;

/// <summary>The way into the demo: as it was left, or made anew; elsewhere, where it cannot lie here.</summary>
internal sealed class DemoDoor(Desk desk, TextUiServices services)
{
    private const string Folder = "Folder";

    public async Task<Opening?> OpenAsync()
    {
        var usual = Path.Combine(services.CurrentDirectory, "exports", "demo", "register");

        if (IsDemo(new RegisterFolder(usual)))
        {
            return new Question("There is a demo here already. Open it as it was left, or make it anew?", [
                new Answer("o", "open it as it was left", () => Task.FromResult<Opening?>(new Leave(usual))),
                new Answer("a", "make it anew; what was tried in it is gone", () => MakeAsync(usual)),
            ]);
        }

        return await MakeAsync(usual);
    }

    private static bool IsDemo(RegisterFolder folder)
    {
        try
        {
            return folder.HoldsRegister && new RegisterStore(folder, Surroundings.Usual).Read(reader => reader.IsDemo());
        }
        catch (RefusedException)
        {
            // What cannot be read is not replaced; making the demo says so.
            return false;
        }
    }

    private async Task<Opening?> MakeAsync(string folder)
    {
        try
        {
            await MadeAsync(folder);
            return new Leave(folder);
        }
        catch (RefusedException refusal)
        {
            return Elsewhere(refusal.Message);
        }
    }

    private Form Elsewhere(string why) => new("The demo, in another folder", [
        new Field(Folder, Path.Combine(Path.GetTempPath(), "edreg-demo")) { IsNeeded = true, Form = "a new folder", Wrong = TypedPath.Wrong },
    ], async form =>
    {
        var folder = TypedPath.Full(form[Folder]!, services.CurrentDirectory);
        await MadeAsync(folder);

        return new Saved("", new Leave(folder));
    })
    {
        About = [why],
    };

    private async Task MadeAsync(string folder)
    {
        desk.Progress("Making the demo…");

        try
        {
            await Task.Run(() => new MakeDemo(_ => { }).Run(new RegisterFolder(folder)));
        }
        catch (Exception failure) when (failure is UnauthorizedAccessException or IOException)
        {
            throw new RefusedException("register-not-made", $"No register was made: the demo cannot be written to {folder} ({failure.Message.TrimEnd('.')}). Name a folder of your own.");
        }
        finally
        {
            desk.Say("");
        }
    }
}
