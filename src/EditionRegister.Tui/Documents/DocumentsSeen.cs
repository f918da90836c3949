using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Documents;

namespace EditionRegister.Tui.Documents;

/// <summary>What the register says of an order before it is given: which sheets that are, what they go on, and why it cannot be.</summary>
internal sealed record DocumentsSeen(IReadOnlyList<string> Codes, IReadOnlyList<LabelSheet> LabelSheets, string Exports, LabelsPlanned? Planned, string? Problem)
{
    /// <summary>The label sheet to begin with.</summary>
    public const string Usual = "a4-3x8";

    public static DocumentsSeen Nothing { get; } = new([], [], "", null, null);

    /// <param name="register">The register.</param>
    /// <param name="choice">The sheets, or null where none are chosen.</param>
    /// <param name="labelSheet">The label sheet by name; null is the usual one.</param>
    /// <param name="from">The first label that is still there.</param>
    /// <param name="isOnLabels">Whether labels are to be counted.</param>
    public static DocumentsSeen Read(Register register, ImpressionChoice? choice, string? labelSheet, int from, bool isOnLabels)
    {
        var seen = Nothing with { Exports = register.Folder.Exports };

        try
        {
            seen = seen with { LabelSheets = isOnLabels ? register.ListLabelSheets.Run() : [] };
            seen = choice is null ? seen : seen with { Codes = [.. SheetsAmong.Of(register, choice).Select(sheet => sheet.ShownCode)] };

            return choice is null ? seen
                : seen.Codes.Count == 0 ? seen with { Problem = "No sheet is among these. Choose others with s." }
                : !isOnLabels ? seen
                : seen with { Planned = register.PlanLabels.Run(choice, labelSheet ?? Usual, from) };
        }
        catch (RefusedException refusal)
        {
            return seen with { Problem = refusal.Message };
        }
    }
}
