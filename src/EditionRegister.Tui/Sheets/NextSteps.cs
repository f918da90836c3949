using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Sheets;

/// <summary>Every other way sheets may go, be kept for someone or pass on, behind one key: only what can happen to them as they are.</summary>
internal static class NextSteps
{
    public const string Explained = "Everything else that may happen next: reserved, lent, on approval, at the framer, exhibited, given, exchanged, collected, lost, found. Pick it from a list.";

    public static Task<Opening?> OfAsync(Desk desk, SheetsAtHand sheets) => Task.FromResult<Opening?>(new Choice("What comes next?", [.. Steps(desk, sheets)]));

    private static IEnumerable<Choosable> Steps(Desk desk, SheetsAtHand sheets)
    {
        var (missing, gone) = (All(sheets, (_, sheet) => WhereaboutsDeeds.IsMissing(sheet) || sheet.Where is { State: "unknown" }), All(sheets, (_, sheet) => sheet.Where is { State: "gone" }));
        var (ours, reserved) = (All(sheets, (work, sheet) => !Transfers.HasLeftTheMaker(work, sheet)), All(sheets, (_, sheet) => sheet.StandingReservation is not null));

        if (missing || gone)
        {
            yield return Choosable.Opens("f", "found again", () => FindForm.Of(desk, sheets));
        }

        if (gone)
        {
            yield break;
        }

        if (ours && !reserved)
        {
            yield return Choosable.Opens("r", "reserve for someone", () => ReserveForm.Of(desk, sheets));
        }

        if (reserved)
        {
            yield return Choosable.Opens("r", "lift the reservation", () => ReserveForm.Lift(desk, sheets));
        }

        yield return Choosable.Opens("l", "lend", () => SendForm.Of(desk, sheets, MoveKind.Lent));
        yield return Choosable.Opens("a", "give on approval", () => SendForm.Of(desk, sheets, MoveKind.OnApproval));
        yield return Choosable.Opens("k", "take to the framer", () => SendForm.Of(desk, sheets, MoveKind.AtFramer));
        yield return Choosable.Opens("p", "take to the photographer", () => SendForm.Of(desk, sheets, MoveKind.AtPhotographer));
        yield return Choosable.Opens("c", "take to the conservator", () => SendForm.Of(desk, sheets, MoveKind.AtConservator));
        yield return Choosable.Opens("t", "hand to a carrier, in transit", () => SendForm.Of(desk, sheets, MoveKind.InTransit));
        yield return new Choosable("e", "hang in a show", () => ExhibitForm.OfAsync(desk, sheets));

        if (All(sheets, (work, sheet) => Consignments.StandingOf(work, sheet) is not null))
        {
            yield return Choosable.Opens("o", "the consignee passes it on", () => SendForm.Of(desk, sheets, MoveKind.SubConsigned));
        }

        yield return Choosable.Opens("g", "give away", () => PassForm.Of(desk, sheets, MoveKind.Given));
        yield return Choosable.Opens("x", "exchange", () => PassForm.Of(desk, sheets, MoveKind.Exchanged));
        yield return Choosable.Opens("b", "bequeathed", () => PassForm.Of(desk, sheets, MoveKind.Bequeathed));

        if (All(sheets, (work, sheet) => !Transfers.IsStillTheMakers(work, sheet)))
        {
            yield return Choosable.Opens("w", "wait for its owner to collect it", () => SendForm.Of(desk, sheets, MoveKind.AwaitingCollection));
            yield return Choosable.Opens("h", "hand over to its owner", () => HandOverForm.Of(desk, sheets));
        }

        if (All(sheets, (_, sheet) => sheet.Ownership is [_, .., { Kind: "sold" or "exchanged" }]))
        {
            yield return Choosable.Opens("y", "the buyer gives it back", () => BuyersReturnForm.Of(desk, sheets));
        }

        yield return Choosable.Opens("m", "lost, stolen or destroyed", () => MishapForm.Of(desk, sheets));
    }

    private static bool All(SheetsAtHand sheets, Func<Work, Impression, bool> are) => sheets.Pairs.All(pair => are(pair.Work, pair.Sheet));
}
