using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Passes;

/// <summary>Recording a pass, doing one again, putting one right, and taking the last one back.</summary>
public static class PassDeeds
{
    /// <summary>Records the next pass of a run. Nobody adds sheets late unless it is said.</summary>
    /// <exception cref="RefusedException">pass-does-not-balance, pass-takes-in-too-many, matrix-cannot-print, state-not-yet, states-run-back and others of <see cref="PassRefusals"/>.</exception>
    public static Pass Record(Work work, PrintRun run, PassWords words, Deed deed) => Add(work, run, words with { Added = words.Added ?? 0 }, Blank(run, deed), deed);

    /// <summary>The last pass again, with what is different: what was printed how and by whom, not what was counted, nor its date and note.</summary>
    /// <exception cref="RefusedException">pass-not-found: there is none yet; else as <see cref="Record"/>.</exception>
    public static Pass Again(Work work, PrintRun run, PassWords changes, Deed deed)
    {
        var last = run.Passes.Count > 0 ? run.Passes[^1] : throw PassRefusals.NoneYet(work, run);
        var isSame = changes.Kind is null || changes.Kind == last.Kind;
        var again = Blank(run, deed) with
        {
            Kind = last.Kind,
            Name = last.Name,
            Side = last.Side,
            // What is done in another way is not printed from the same block.
            Matrices = isSame ? last.Matrices : [],
            Colours = last.Colours,
            People = last.People,
        };

        return Add(work, run, changes with { Added = changes.Added ?? 0 }, again, deed);
    }

    /// <exception cref="RefusedException">As <see cref="Record"/>; and the pass after it must still find its sheets.</exception>
    public static Pass PutRight(Work work, PrintRun run, Pass pass, PassWords words, Deed deed)
    {
        var before = PassBalance.Of(run).First(standing => standing.Pass.Id == pass.Id).AtHand;
        var right = words.On(pass, before, SheetsCut.Of(run));
        Sound(work, run, run with { Passes = [.. run.Passes.Select(one => one.Id == pass.Id ? right : one)] }, right, words);
        PassRows.Write(right, pass, deed);
        HoldOut(work, run, right, words, deed);

        return right;
    }

    /// <summary>Takes the last pass back. Sheets held out after it stay held out, of which pass is then not said.</summary>
    /// <exception cref="RefusedException">pass-not-found or pass-not-the-last.</exception>
    public static void TakeBack(Work work, PrintRun run, int ordinal, Deed deed)
    {
        var pass = run.Passes.FirstOrDefault(one => one.Ordinal == ordinal) ?? throw PassRefusals.NotFound(work, run, ordinal);

        if (pass != run.Passes[^1])
        {
            throw PassRefusals.NotTheLast(run, pass);
        }

        foreach (var sheet in work.Impressions.Where(sheet => sheet.AfterPass == pass.Id))
        {
            deed.Set("impression", sheet.Id, ("after_pass", FactValue.Null));
        }

        PassRows.TakeAway(pass, deed);
    }

    private static Pass Add(Work work, PrintRun run, PassWords words, Pass blank, Deed deed)
    {
        var pass = words.On(blank, PassBalance.AtHand(run), SheetsCut.Of(run));
        Sound(work, run, run with { Passes = [.. run.Passes, pass] }, pass, words);
        PassRows.Write(pass, null, deed);
        HoldOut(work, run, pass, words, deed);

        return pass;
    }

    private static Pass Blank(PrintRun run, Deed deed) => new()
    {
        Id = deed.NewId("pass"),
        V = 0,
        Run = run.Id,
        Ordinal = run.Passes.Count == 0 ? 1 : run.Passes[^1].Ordinal + 1,
        Kind = "printed",
        Side = "recto",
        Reach = "all",
        Done = RecordedDate.None,
        Matrices = [],
        Colours = [],
        People = [],
        SpoiledBy = [],
        HeldOutAs = [],
        Sheets = [],
    };

    /// <summary>Refuses what would not come out even, or could not have been printed so; what stood wrong before is left to the check.</summary>
    private static void Sound(Work work, PrintRun before, PrintRun after, Pass pass, PassWords words)
    {
        PassRefusals.DemandWords(work, pass);
        var stood = PassWeighing.Problems(work, before).Select(problem => problem.Message).ToHashSet(StringComparer.Ordinal);

        if (PassWeighing.Problems(work, after).FirstOrDefault(problem => !stood.Contains(problem.Message)) is { } problem)
        {
            throw problem;
        }

        foreach (var sheet in (words.Proofs ?? []).Concat(words.Sheets ?? []).Where(sheet => sheet.Run != before.Id))
        {
            throw PassRefusals.NotOfThisRun(work, before, sheet);
        }
    }

    private static void HoldOut(Work work, PrintRun run, Pass pass, PassWords words, Deed deed)
    {
        var linked = work.Impressions.Where(sheet => sheet.AfterPass == pass.Id).Concat(words.Proofs ?? []).DistinctBy(sheet => sheet.Id).Count();

        if (words.Proofs is not null && SheetsCut.Of(run).IsOneToOne && pass.HeldOut < linked)
        {
            throw PassRefusals.TooManyProofs(pass, linked);
        }

        foreach (var sheet in words.Proofs ?? [])
        {
            if (sheet.Number is not null && sheet.Standing != "held-out")
            {
                throw ImpressionRefusals.Numbered(work, sheet);
            }

            if (sheet.AfterPass is { } other && other != pass.Id)
            {
                throw PassRefusals.HeldOutBefore(run, sheet);
            }

            deed.Set("impression", sheet.Id, ("standing", "held-out"), ("after_pass", pass.Id));
        }
    }
}
