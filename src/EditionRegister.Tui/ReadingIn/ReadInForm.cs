using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.ReadingIn;

/// <summary>Opens what is asked before a file is read in: which one; then what is in it is shown, before any of it is taken.</summary>
internal static class ReadInForm
{
    private const string File = "File";

    public static Opening New(Desk desk)
    {
        FilesNearby files = new(".CSV", ".TSV", ".TXT");

        return new Form("Read in a file", [
            new Field(File) { IsNeeded = true, Form = "a CSV file, such as prints.csv or ~/Documents/prints.csv", Wrong = TypedPath.Wrong, Known = files.Of },
        ], form => LookAsync(desk, TypedPath.Full(form[File]!)))
        {
            About = ["A list from a spreadsheet, saved as CSV: a line of headings, then one sheet on each line. First you are shown what would be made of it; nothing is taken until you say so."],
            Caution = "Of pupils, read in only what the school's policy and the law where you are allow.",
        };
    }

    /// <summary>Looked into once before the page opens, so that a file that cannot be read is said where its path was typed.</summary>
    private static async Task<Saved> LookAsync(Desk desk, string path)
    {
        desk.Progress($"Looking into {Path.GetFileName(path)}…");
        var seen = await desk.Store.Do(register => register.ReadIn.Preview(path, []));

        return new Saved("", new ReadInPage(desk, path, seen));
    }
}
