using System.Globalization;
using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Planning;

/// <summary>Why sheets or paper cannot be planned so.</summary>
public static class PlanRefusals
{
    public static RefusedException OutOfBounds() =>
        new("plan-impossible", "Sheets and passes are counted from 1 to 99,999, a pass keeps more than 0 and at most 100 per cent, and nothing is wholly sure. Nothing was changed. Look at the figures again.");

    public static RefusedException TooMany(int good, int passes) =>
        new("plan-impossible", string.Create(CultureInfo.InvariantCulture, $"{good} good sheets after {passes} passes would need more than 99,999 to be started. Nothing was changed. Plan fewer passes, or keep more in each."));

    public static RefusedException KeepNotKnown() =>
        new("keep-rate-not-known", "What share of the sheets a pass keeps is not given, and no pass of this register has its sheets counted yet. Nothing was changed. Say what a pass keeps, in per cent, such as 97; on the command line with --keep.");

    public static RefusedException DoesNotFit(Size paper, Size piece, bool byGrain) =>
        new("piece-does-not-fit", $"A piece of {piece.Show("mm")} is not to be had out of a sheet of {paper.Show("mm")}{(byGrain ? " with its grain running so" : "")}. Nothing was changed. {(byGrain ? "Take larger paper or a smaller piece, or leave --grain out" : "Take larger paper or a smaller piece")}.");

    public static RefusedException DeckleTrimmed() =>
        new("deckle-is-trimmed", "What is trimmed off the sheet is its deckle edge, so both cannot be had. Nothing was changed. Leave out --keep-deckle or --trim.");
}
