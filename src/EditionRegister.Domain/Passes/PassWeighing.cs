using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Passes;

/// <summary>Everything that surely cannot be about the passes of a run, as the refusals it would be met with.</summary>
internal static class PassWeighing
{
    public static IEnumerable<RefusedException> Problems(Work work, PrintRun run) =>
        PassBalance.Of(run).SelectMany(standing => Problems(work, run, standing));

    private static IEnumerable<RefusedException> Problems(Work work, PrintRun run, PassStanding standing)
    {
        var pass = standing.Pass;
        var counts = PassCounts.Of(pass);

        if (counts.Missing is { } missing && missing != 0)
        {
            yield return PassRefusals.DoesNotBalance(pass);
        }

        if ((long?)counts.In + counts.Added < (long?)(counts.Out ?? 0) + (counts.Spoiled ?? 0) + (counts.HeldOut ?? 0) && counts.Missing is null)
        {
            yield return PassRefusals.MoreThanWentIn(pass);
        }

        if (counts.In > standing.AtHand)
        {
            yield return PassRefusals.TakesTooMany(pass, standing.AtHand!.Value);
        }

        if (!pass.TakesAll && pass.Sheets.Count > 0 && counts.In is { } went && SheetsCut.Of(run).IsOneToOne && went != pass.Sheets.Count)
        {
            yield return PassRefusals.OtherSheets(pass, pass.Sheets.Count);
        }

        if (pass.SpoiledBy.Sum(one => (long)one.Sheets) > counts.Spoiled)
        {
            yield return PassRefusals.MoreNamed(pass, "spoiled", pass.SpoiledBy.Sum(one => (long)one.Sheets), counts.Spoiled!.Value);
        }

        if (pass.HeldOutAs.Sum(one => (long)one.Sheets) > counts.HeldOut)
        {
            yield return PassRefusals.MoreNamed(pass, "held out", pass.HeldOutAs.Sum(one => (long)one.Sheets), counts.HeldOut!.Value);
        }

        foreach (var used in pass.Matrices)
        {
            if (work.Matrices.FirstOrDefault(matrix => matrix.Id == used.Matrix) is { } matrix
                && MatrixMisuse.Of(work, run, pass, matrix, matrix.States.FirstOrDefault(state => state.Id == used.State)) is { What: not Misuse.None } misuse)
            {
                yield return PassRefusals.Misused(pass, matrix, matrix.States.FirstOrDefault(state => state.Id == used.State), misuse.What, misuse.Other);
            }
        }
    }
}
