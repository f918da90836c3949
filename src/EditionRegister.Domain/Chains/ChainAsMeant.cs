using System.Globalization;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>A chain as it would stand after a step was put right, put in between or taken out: refused where it is surely impossible.</summary>
internal static class ChainAsMeant
{
    /// <exception cref="RefusedException">chain-would-break.</exception>
    public static void Holds(Work work, Impression sheet, IReadOnlyList<(MoveKind Kind, Position To, RecordedDate Date)> moves)
    {
        DatesRun(work, sheet, moves.Select(move => (move.Kind, move.Date)));

        for (var at = 1; at < moves.Count; at++)
        {
            var (before, step) = (moves[at - 1], moves[at]);

            if (before.To.State == "gone" && step.Kind != MoveKind.Found)
            {
                throw MendingRefusals.Impossible(sheet, $"{Step(at, step.Kind)} would come after it was gone for good");
            }

            if (before.Kind.IsMissing && !step.Kind.IsMissing && step.Kind != MoveKind.Found && step.Kind != MoveKind.Destroyed)
            {
                throw MendingRefusals.Impossible(sheet, $"{Step(at, step.Kind)} would come after it was {before.Kind.Name}, and it was not found in between");
            }

            if (step.Kind == MoveKind.SubConsigned && !moves.Take(at).Any(earlier => earlier.Kind == MoveKind.Consigned))
            {
                throw MendingRefusals.Impossible(sheet, $"{Step(at, step.Kind)} would come before it was consigned to anybody");
            }
        }
    }

    /// <exception cref="RefusedException">chain-would-break.</exception>
    public static void Holds(Work work, Impression sheet, IReadOnlyList<(MoveKind Kind, Owner To, RecordedDate Date)> transfers)
    {
        DatesRun(work, sheet, transfers.Select(transfer => (transfer.Kind, transfer.Date)));

        for (var at = 1; at < transfers.Count; at++)
        {
            var (before, step) = (transfers[at - 1], transfers[at]);

            if (step.To == before.To && step.To.State == "known")
            {
                throw MendingRefusals.Impossible(sheet, $"{Step(at, step.Kind)} would pass it to {WhereInWords.OwnerOf(work, step.To)}, whose it is already");
            }

            if (step.Kind == MoveKind.ReturnedByBuyer && (at < 2 || step.To != transfers[at - 2].To))
            {
                throw MendingRefusals.Impossible(sheet, $"{Step(at, step.Kind)} would not give it back to the one who sold it");
            }
        }
    }

    private static void DatesRun(Work work, Impression sheet, IEnumerable<(MoveKind Kind, RecordedDate Date)> steps)
    {
        var printed = work.RunOf(sheet)?.Printed ?? RecordedDate.None;
        List<(MoveKind Kind, RecordedDate Date)> before = [];

        foreach (var step in steps)
        {
            if (step.Date.SurelyBefore(printed))
            {
                throw MendingRefusals.Impossible(sheet, $"{Step(before.Count, step.Kind)}, {step.Date}, would come before it was printed ({printed})");
            }

            foreach (var (kind, date) in before)
            {
                if (step.Date.SurelyBefore(date))
                {
                    throw MendingRefusals.Impossible(sheet, $"{Step(before.Count, step.Kind)}, {step.Date}, would come before it was {kind.Name} ({date}), which stands before it");
                }
            }

            before.Add(step);
        }
    }

    private static string Step(int at, MoveKind kind) => string.Create(CultureInfo.InvariantCulture, $"step {at + 1} ({kind.Name})");
}
