using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>The pulls of a run as cells of a tray, in the order of the pile, and the letters that say how each is sorted.</summary>
internal static class PileTray
{
    public const string Legend = "p pulled, not sorted  k kept  n numbered  s spare  x left out  h held out";

    public static IReadOnlyList<TrayGroup> Of(IReadOnlyList<Impression> pile, IReadOnlySet<long> marked) =>
        pile.Count == 0 ? [] : [new TrayGroup("The pile, the first sheet at the left", [.. pile.Select(sheet => Cell(sheet, marked))])];

    /// <summary>Sheet 4 of 16 (7KQ4-M2X3): left out, slur.</summary>
    public static string Told(Work work, Impression sheet, int pile)
    {
        var fault = work.OwnWords.FaultOf(sheet.Fault) is { } known ? $", {known.Name}" : sheet.Fault is { } found ? $", {found}" : "";
        var number = sheet.Number is null ? "" : $", numbered {work.NumberOf(sheet)}";
        var note = sheet.FaultNote is { } said ? $" ({said})" : "";

        var grade = sheet.Grade is null ? "" : $" Graded {GradeShown.Marks(sheet.Grade)}.";

        return $"Sheet {Counted.Figure(sheet.Ordinal)} of {Counted.Figure(pile)} ({sheet.ShownCode}): {Called.Plain(sheet.Standing)}{fault}{note}{number}.{grade}";
    }

    private static TrayCell Cell(Impression sheet, IReadOnlySet<long> marked)
    {
        var letter = Letter(sheet);
        var tone = letter switch { 'p' => Tone.Strong, 'x' => Tone.Bad, 'k' or 'n' => Tone.Good, _ => Tone.Plain };

        return new TrayCell(Counted.Figure(sheet.Ordinal), letter, sheet.Grade is null ? ' ' : '·', IsMarked: marked.Contains(sheet.Id), Tone: tone);
    }

    private static char Letter(Impression sheet) => sheet.Standing switch
    {
        "pulled" => 'p',
        "kept" => sheet.Number is null ? 'k' : 'n',
        "spare" => 's',
        "left-out" => 'x',
        "held-out" => 'h',
        _ => '?',
    };
}
