using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases;

namespace EditionRegister.Tui.PlanChest;

/// <summary>What checks find in one work, and the signs that stand for it in a tray: each another sign, and none of them a letter of the map.</summary>
internal static class EditionFindings
{
    /// <summary>Those that still want something: what was accepted with a reason is marked no more.</summary>
    public static IReadOnlyList<Finding> Of(Register register, Work work) => [.. register.LookAround.FindingsIn(work).Where(finding => finding.Accepted is null)];

    /// <summary>A finding about several sheets has one of them as its subject and names the others.</summary>
    public static bool IsAbout(Finding finding, Impression sheet) =>
        finding.Subject.Kind == "impression" && (finding.Subject.Id == sheet.Id || finding.Message.Contains(sheet.ShownCode, StringComparison.Ordinal));

    /// <summary>The sign of the gravest, or a blank where nothing was found.</summary>
    public static char Sign(IReadOnlyList<Finding> findings) => findings.Count == 0 ? ' ' : Sign(findings.Max(finding => finding.Severity));

    public static char Sign(Severity severity) => severity switch
    {
        Severity.Contradiction => '!',
        Severity.Query => '~',
        _ => '·',
    };

    public static string Meaning(Severity severity) => severity switch
    {
        Severity.Contradiction => "contradiction",
        Severity.Query => "query",
        _ => "note",
    };

    public static Pages.Tone Tone(Severity severity) => severity switch
    {
        Severity.Contradiction => Pages.Tone.Bad,
        Severity.Query => Pages.Tone.Warning,
        _ => Pages.Tone.Quiet,
    };
}
