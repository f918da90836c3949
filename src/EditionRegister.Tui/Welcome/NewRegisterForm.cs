using EditionRegister.Domain;
using EditionRegister.Store;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Registers;

namespace EditionRegister.Tui.Welcome;

/// <summary>What is asked before an empty register is made; it is opened at once.</summary>
internal static class NewRegisterForm
{
    private const string Folder = "Folder";
    private const string Called = "What it is called";

    public static Form Of(TextUiServices services) => new("A new register", [
        new Field(Folder, "register") { IsNeeded = true, Form = "a folder of its own, made anew: register, or ~/prints", Wrong = typed => WrongFolder(typed, services) },
        new Field(Called) { Form = "at the top of the screen and on lists: Studio Tolland; empty takes the folder's name" },
        SettingsFields.Currency("EUR"),
        SettingsFields.Sizes("mm"),
        SettingsFields.Writing("measured"),
        SettingsFields.Paper("A4"),
        SettingsFields.Link(""),
    ], form => MakeAsync(form, services))
    {
        About = ["One folder holds everything. Only where it lies cannot be changed from within; the rest is in the register's settings later."],
    };

    private static async Task<Saved> MakeAsync(Form form, TextUiServices services)
    {
        var path = TypedPath.Full(form[Folder]!, services.CurrentDirectory);
        RegisterSettings settings = new()
        {
            Name = form[Called] ?? Path.GetFileName(path),
            Currency = form[SettingsFields.CurrencyLabel]!.ToUpperInvariant(),
            Units = form[SettingsFields.SizesLabel]!,
            SizeWriting = SettingsFields.WritingOf(form),
            Page = SettingsFields.PageOf(form),
            BaseUrl = form[SettingsFields.LinkLabel]?.TrimEnd('/'),
        };

        try
        {
            await Task.Run(() => new MakeRegister(services.Surroundings).Run(new RegisterFolder(path), settings));
        }
        catch (Exception failure) when (failure is UnauthorizedAccessException or IOException)
        {
            throw new RefusedException("register-not-made", $"No register was made: {path} cannot be written ({failure.Message.TrimEnd('.')}). Name a folder of your own.");
        }

        return new Saved("", new Leave(path));
    }

    private static string? WrongFolder(string typed, TextUiServices services)
    {
        if (TypedPath.Wrong(typed) is { } wrong)
        {
            return wrong;
        }

        var path = TypedPath.Full(typed, services.CurrentDirectory);

        return new RegisterFolder(path).HoldsRegister ? $"{path} holds a register already. Leave this form with Esc and press o to open it, or name another folder."
            : File.Exists(path) ? $"{path} is a file. Name a folder."
            : HoldsAnything(path) ? $"{path} holds other files. A register has a folder of its own: name one that is not there yet, such as {Path.Combine(path, "register")}."
            : null;
    }

    private static bool HoldsAnything(string path)
    {
        try
        {
            return Directory.Exists(path) && Directory.EnumerateFileSystemEntries(path).Any();
        }
        catch (Exception failure) when (failure is UnauthorizedAccessException or IOException)
        {
            // What cannot be looked into cannot be written either; making the register says so.
            return false;
        }
    }
}
