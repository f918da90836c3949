using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Sizes;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.PlanChest;

/// <summary>All that the page of one impression shows, as the register stood when it was read.</summary>
internal sealed record ImpressionWhole(ImpressionSeen Seen, IReadOnlyList<Finding> Findings, SizeStyle Sizes)
{
    /// <summary>“Harbour” 3/12; a sheet without a number by its standing.</summary>
    public string Name => $"{Called.Work(Seen.Work)} {Seen.Work.NumberOf(Seen.Impression)}";

    /// <summary>What counts, without what was accepted.</summary>
    public IReadOnlyList<Finding> Open => [.. Findings.Where(finding => finding.Accepted is null)];

    public IReadOnlyList<Finding> Accepted => [.. Findings.Where(finding => finding.Accepted is not null)];

    /// <exception cref="Domain.RefusedException">code-misread or code-not-found.</exception>
    public static ImpressionWhole Read(Register register, string code)
    {
        var seen = register.LookAround.Impression(code);
        var findings = register.LookAround.FindingsIn(seen.Work).Where(finding => EditionFindings.IsAbout(finding, seen.Impression)).OrderByDescending(finding => finding.Severity);

        return new ImpressionWhole(seen, [.. findings], register.Settings.Sizes);
    }
}
