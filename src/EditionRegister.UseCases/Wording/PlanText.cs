using System.Globalization;
using EditionRegister.Domain.Planning;
using EditionRegister.UseCases.Planning;

namespace EditionRegister.UseCases.Wording;

/// <summary>A plan of sheets and paper in lines.</summary>
public static class PlanText
{
    private const double Hundred = 100;

    /// <summary>97.61 %, rounded half up, the same in every culture.</summary>
    public static string Percent(double share) => $"{Math.Round(share * Hundred, 2, MidpointRounding.AwayFromZero).ToString("0.##", CultureInfo.InvariantCulture)} %";

    /// <summary>86.70 %: in a column, where the points stand under each other.</summary>
    public static string Probability(double share) => $"{Math.Round(share * Hundred, 2, MidpointRounding.AwayFromZero).ToString("0.00", CultureInfo.InvariantCulture)} %";

    /// <summary>What is planned for, and at what rate.</summary>
    public static string Head(SheetsToStart plan) =>
        $"{Counted.Of(plan.Good, "good sheet")} after {Counted.Of(plan.Passes, "pass", "passes")} that {(plan.Passes == 1 ? "keeps" : "each keep")} {Percent(plan.Keep)}: of the sheets started {Percent(plan.Through)} come through.";

    /// <summary>Start 26 sheets to be 95 % sure.</summary>
    public static string Answer(SheetsToStart plan) => $"Start {Counted.Sheets(plan.Start)} to be {Percent(plan.Sure)} sure.";

    /// <summary>Where the rate comes from, and how far it can be leaned on; nothing where it was given.</summary>
    public static IEnumerable<string> Learned(SheetsPlanned planned)
    {
        if (planned.Learned is not { } rate)
        {
            yield break;
        }

        yield return $"Learned from {Counted.Of(rate.Passes, "pass", "passes")} of this register: {Counted.Figure(rate.Kept)} of {Counted.Sheets(rate.Of)} kept, {Percent(rate.Share)}; the {Percent(KeepRate.Sure)} interval (Clopper-Pearson, exact) runs from {Percent(rate.Lower)} to {Percent(rate.Upper)}.";

        if (planned.Safer is { } safer)
        {
            yield return $"At its lower end, {Percent(safer.Keep)} a pass: start {Counted.Sheets(safer.Start)} to be {Percent(safer.Sure)} sure.";
        }

        if (rate.IsFew)
        {
            yield return "Few passes are counted yet, so lean on the lower end.";
        }
    }

    /// <param name="pieces">How the pieces lie in the sheet.</param>
    /// <param name="wanted">How many pieces are wanted.</param>
    /// <param name="keepsDeckle">Only pieces that keep a deckle edge count.</param>
    public static string Paper(PaperPieces pieces, int wanted, bool keepsDeckle)
    {
        var grid = $"{Counted.Of(pieces.Rows, "row")} of {Counted.Figure(pieces.Columns)}{(pieces.IsTurned ? ", turned across the sheet" : "")}";
        var deckle = keepsDeckle ? pieces.PerSheet == pieces.Rows * pieces.Columns ? ", each with a deckle edge" : $", of which {Counted.Figure(pieces.PerSheet)} keep a deckle edge" : "";

        return $"Out of one full sheet come {Counted.Of(pieces.PerSheet, "piece")} ({grid}{deckle}): {Counted.Of(pieces.SheetsFor(wanted), "full sheet")} for {Counted.Figure(wanted)}.";
    }
}
