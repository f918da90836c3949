using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Moves;

namespace EditionRegister.Tui.Sheets;

/// <summary>Asks which last step is taken back, and names it.</summary>
internal static class TakeBackQuestion
{
    private const int MostShown = 6;

    /// <exception cref="Domain.RefusedException">first-link-stays, where one of them has no step to take back.</exception>
    public static Question Of(Desk desk, SheetsAtHand sheets)
    {
        var (moved, passed) = (sheets.Sheets.All(sheet => sheet.Whereabouts.Count > 1), sheets.Sheets.All(sheet => sheet.Ownership.Count > 1));

        if (!moved && !passed)
        {
            throw ChainRefusals.FirstLinkStays(sheets.Sheets.First(sheet => sheet.Whereabouts.Count <= 1 || sheet.Ownership.Count <= 1));
        }

        var meant = LinksMeant.LastOf([.. sheets.Sheets]);
        List<Answer> answers = [];

        if (moved && passed)
        {
            answers.Add(Answer("b", "take both back", move: true, transfer: true));
        }

        if (moved)
        {
            answers.Add(Answer("m", "take the move back", move: true, transfer: false));
        }

        if (passed)
        {
            answers.Add(Answer("s", Called(sheets), move: false, transfer: true));
        }

        answers.Add(new Answer("n", "leave it as it is", () => Task.FromResult<Opening?>(null)));

        return new Question($"Take the last step of {sheets.Called} back?", answers)
        {
            Shown =
            [
                .. moved ? Told(sheets, "where: ", Move) : [],
                .. passed ? Told(sheets, "whose: ", Transfer) : [],
            ],
        };

        Answer Answer(string key, string means, bool move, bool transfer) => new(key, means, async () =>
        {
            desk.Say(await LastStep.TakeBackAsync(desk, sheets, meant, move, transfer), Tone.Good);
            desk.Undo = null;

            return null;
        });
    }

    private static string Called(SheetsAtHand sheets) => sheets.Sheets.All(sheet => sheet.Ownership[^1].Kind == MoveKind.Sold.Word) ? "take the sale back" : "take the transfer back";

    private static IEnumerable<Line> Told(SheetsAtHand sheets, string which, Func<Work, Impression, string> told)
    {
        var steps = sheets.Pairs.GroupBy(pair => told(pair.Work, pair.Sheet)).ToList();

        foreach (var step in steps.Take(MostShown))
        {
            yield return Line.Of(which, Tone.Quiet).Then(sheets.IsOne ? step.Key : $"{Counted.Sheets(step.Count())} {step.Key}");
        }

        if (steps.Count > MostShown)
        {
            yield return Line.Of($"{which}and {Counted.Of(steps.Count - MostShown, "other step")}", Tone.Quiet);
        }
    }

    private static string Move(Work work, Impression sheet)
    {
        var last = sheet.Whereabouts[^1];

        return $"{MoveKind.Of(last.Kind)?.Name ?? last.Kind}, {WhereInWords.Of(work, last.To)}, {last.Moved}";
    }

    private static string Transfer(Work work, Impression sheet)
    {
        var last = sheet.Ownership[^1];
        var price = PricesShown.Show(last.Price, last.Currency);

        return $"{MoveKind.Of(last.Kind)?.Name ?? last.Kind} to {WhereInWords.OwnerOf(work, last.To)}{(price is null ? "" : $" for {price}")}, {last.Passed}";
    }
}
