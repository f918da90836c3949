using EditionRegister.Domain.Integrity;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Findings;

/// <summary>What to do where the file itself is damaged or was changed: nothing in the rooms mends that.</summary>
internal static class FileFinding
{
    private const string Explains =
        "What is found of the file itself was not recorded by this program: a disk has failed, or something else has written to the file. No edit mends it and no reason makes it sound. "
        + "This page says what was found and what to do.";

    /// <param name="finding">What was found.</param>
    /// <param name="backup">The newest copy, as a path from the register's folder on, or null.</param>
    public static Page Page(Finding finding, string? backup) => new TextPageOf("the file itself", Explains, width =>
    [
        .. FindingInWords.Of(finding, width),
        Line.Empty,
        Line.Of("Step by step", Tone.Strong),
        .. Steps(backup).SelectMany((step, at) => Step($"{Counted.Figure(at + 1)}. ", step, width)),
    ]);

    private static IEnumerable<string> Steps(string? backup)
    {
        yield return "Record nothing more here for now. What you record on a damaged file may be lost with it.";
        yield return "Leave the program (q), and copy the whole folder of the register to another disk, as it is.";
        yield return backup is null
            ? "Look for an older copy of register.db: there is none in the backups folder, but perhaps on another disk, on a stick, or where you keep copies of your computer."
            : $"Take the newest copy, {backup}: put it as register.db into a new folder, with register.toml and images beside it.";
        yield return "Run `edreg check --register FOLDER` on that copy. Where it says that the logbook is unbroken and finds nothing of the file, go on from there.";
        yield return "Whatever was recorded since is still in the damaged file's logbook: read it there, and record it again in the copy.";
    }

    private static IEnumerable<Line> Step(string number, string text, int width) =>
        Wrap.Of(text, Math.Max(20, width - number.Length)).Select((line, at) => Line.Of(at == 0 ? number : new string(' ', number.Length), Tone.Key).Then(line));
}
