using EditionRegister.Store;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Welcome;

/// <summary>Asks for the folder of a register that lies elsewhere, and opens it.</summary>
internal static class ElsewhereForm
{
    private const string Folder = "Folder";

    public static Form Of(TextUiServices services) => new("Open a register", [
        new Field(Folder) { IsNeeded = true, Form = "the folder that holds register.db, such as ~/prints", Wrong = typed => Wrong(typed, services) },
    ], form => Task.FromResult(new Saved("", new Leave(FolderOf(form[Folder]!, services)))));

    private static string? Wrong(string typed, TextUiServices services)
    {
        if (TypedPath.Wrong(typed) is { } wrong)
        {
            return wrong;
        }

        var folder = FolderOf(typed, services);

        return new RegisterFolder(folder).HoldsRegister ? null
            : Directory.Exists(folder) ? $"{folder} holds no {RegisterFolder.DatabaseName}, so no register lies there."
            : $"There is no folder {folder}.";
    }

    // Who names the file itself means the folder it lies in.
    private static string FolderOf(string typed, TextUiServices services)
    {
        var path = TypedPath.Full(typed, services.CurrentDirectory);

        return Path.GetFileName(path) == RegisterFolder.DatabaseName && File.Exists(path) ? Path.GetDirectoryName(path)! : path;
    }
}
