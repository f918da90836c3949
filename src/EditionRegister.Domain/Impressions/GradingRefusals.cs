using System.Globalization;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Impressions;

/// <summary>Why sheets cannot be graded so, or none be proposed.</summary>
public static class GradingRefusals
{
    public static RefusedException Nothing() =>
        new("grade-empty", $"Nothing was said about how the sheets look. Nothing was changed. Give a mark from 1 to 5 for one of {string.Join(", ", GradeAspect.All.Select(aspect => aspect.Word))}, such as --registration 4.");

    public static RefusedException NoMark(GradeAspect aspect, int mark) =>
        new("grade-impossible", string.Create(CultureInfo.InvariantCulture, $"{mark} is no mark for {aspect.Word}: marks go from 1, poor, to 5, as good as it gets. Nothing was changed. Give one of these; what nobody looked at is left out."));

    public static RefusedException MarkedAndNot(GradeAspect aspect) =>
        new("grade-marked-and-not", $"{Capital(aspect.Word)} is marked, and said not to have been looked at. Nothing was changed. Say one of the two.");

    public static RefusedException NothingGraded(Work work, PrintRun run) =>
        new("proposal-nothing-graded", string.Create(CultureInfo.InvariantCulture, $"None of the sheets of print run {run.Ordinal} of “{work.ShownTitle}” that may still be kept is graded, so none can be proposed. Nothing was changed. Grade the pile first with `edreg grade`, or sort it by eye."));

    public static RefusedException TooFew(Work work, PrintRun run, int wanted, int there) =>
        new("proposal-too-few", string.Create(CultureInfo.InvariantCulture, $"{wanted} sheets cannot be proposed: print run {run.Ordinal} of “{work.ShownTitle}” has {there} that may still be kept and have no number. Nothing was changed. Ask for fewer; sheets left out or held out are sorted back first with `edreg sort`."));

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
