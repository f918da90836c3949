using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>A sheet worked over by hand into a work of its own is told by that work alone.</summary>
public sealed class WorkedOverSheetsAreOnePaper : IRule
{
    public string Name => nameof(WorkedOverSheetsAreOnePaper);

    public string Sentence => "A sheet worked over by hand into a work of its own stays among those left out of its old work, and its chain ends there, so that no paper is told by two rows.";

    public string Basis => "arithmetic: one sheet of paper lies in one place";

    public IEnumerable<Finding> Check(Work work)
    {
        foreach (var sheet in work.Impressions)
        {
            if (sheet.WorkedInto is not { } into)
            {
                continue;
            }

            if (sheet.Standing != "left-out")
            {
                yield return this.Contradiction(
                    work.SubjectOf(sheet),
                    $"{work.CalledSheet(sheet)} was worked over into “{into.Title}”, and is {sheet.Standing.Replace('-', ' ')} here.",
                    "Leave the sheet out again: what came of it is the sheet of that work.");
            }

            if (sheet.Where is { State: not "gone" })
            {
                yield return this.Contradiction(
                    work.SubjectOf(sheet),
                    $"{work.CalledSheet(sheet)} was worked over into “{into.Title}”, and lies here still by its old code.",
                    "Take back the step of its chain that came after it was worked over, or correct where it went.");
            }
        }
    }
}
