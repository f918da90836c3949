using System.Globalization;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Passes;

/// <summary>Why a pass cannot be recorded, put right or taken back so.</summary>
public static class PassRefusals
{
    private const int Most = 99_999;

    public static RefusedException NotFound(Work work, PrintRun run, int ordinal) =>
        new("pass-not-found", string.Create(CultureInfo.InvariantCulture, $"Print run {run.Ordinal} of “{work.ShownTitle}” has no pass {ordinal}. Nothing was changed. `edreg pass list {work.Id} --run {run.Ordinal}` shows its passes."));

    public static RefusedException NoneYet(Work work, PrintRun run) =>
        new("pass-not-found", string.Create(CultureInfo.InvariantCulture, $"Print run {run.Ordinal} of “{work.ShownTitle}” has no pass yet that could be done again. Nothing was changed. Record the first with `edreg pass add {work.Id}`."));

    public static RefusedException NotTheLast(PrintRun run, Pass pass) =>
        new("pass-not-the-last", string.Create(CultureInfo.InvariantCulture, $"Pass {pass.Ordinal} is not the last one: the sheets went on to pass {run.Passes[^1].Ordinal}. Nothing was changed. Take the later ones back first, or put this one right with `edreg pass edit`."));

    public static RefusedException DoesNotBalance(Pass pass) =>
        new("pass-does-not-balance", string.Create(CultureInfo.InvariantCulture, $"Pass {pass.Ordinal} does not balance: {WentIn(pass)} makes {(long)pass.SheetsIn! + pass.Added!}, but {pass.SheetsOut} out, {pass.Spoiled} spoiled and {pass.HeldOut} held out make {(long)pass.SheetsOut! + pass.Spoiled! + pass.HeldOut!}. Nothing was changed. Count again; leave out what nobody counted."));

    public static RefusedException MoreThanWentIn(Pass pass) =>
        new("pass-does-not-balance", string.Create(CultureInfo.InvariantCulture, $"Pass {pass.Ordinal} does not balance: {WentIn(pass)} makes {(long)pass.SheetsIn! + (pass.Added ?? 0)}, and more are said to have come of it: {Parts(pass)}. Nothing was changed. Count again; sheets that joined late are given as added."));

    public static RefusedException TakesTooMany(Pass pass, long atHand) =>
        new("pass-takes-in-too-many", string.Create(CultureInfo.InvariantCulture, $"Pass {pass.Ordinal} takes in {pass.SheetsIn}, but {(atHand == 1 ? "only 1 sheet was" : $"only {atHand} sheets were")} left{(pass.Ordinal == 1 ? " of those started" : " at hand by the passes before")}. Nothing was changed. Count again; sheets that joined late are given as added, and where several passes are wrong the last is put right first."));

    public static RefusedException OtherSheets(Pass pass, int sheets) =>
        new("pass-sheets-differ", string.Create(CultureInfo.InvariantCulture, $"Pass {pass.Ordinal} takes in {pass.SheetsIn}, but {sheets} sheets are named for it. Nothing was changed. Name as many as went in, or leave the names out."));

    public static RefusedException MoreNamed(Pass pass, string what, long named, int counted) =>
        new("pass-does-not-balance", string.Create(CultureInfo.InvariantCulture, $"Pass {pass.Ordinal} does not balance: {named} sheets are named as {what}, of {counted} in all. Nothing was changed. Count again, and correct the number that is wrong."));

    public static RefusedException TooManyProofs(Pass pass, int linked) =>
        new("pass-does-not-balance", string.Create(CultureInfo.InvariantCulture, $"Pass {pass.Ordinal} does not balance: {linked} sheets are named as held out after it, of {pass.HeldOut} in all. Nothing was changed. Count again, or name fewer."));

    public static RefusedException HeldOutBefore(PrintRun run, Impression sheet) =>
        new("proof-held-out-already", string.Create(CultureInfo.InvariantCulture, $"{sheet.ShownCode} was held out after pass {run.Passes.FirstOrDefault(pass => pass.Id == sheet.AfterPass)?.Ordinal ?? 0} already, so it did not go through a later one. Nothing was changed. Name another sheet of the pile."));

    public static RefusedException NotOfThisRun(Work work, PrintRun run, Impression sheet) =>
        new("sheet-of-another-run", string.Create(CultureInfo.InvariantCulture, $"{sheet.ShownCode} was not pulled in print run {run.Ordinal} of “{work.ShownTitle}”. Nothing was changed. Name sheets of this run, by their codes or their places in its pile."));

    public static RefusedException UnknownProof(string word) =>
        new("proof-kind-unknown", $"“{word}” is no kind of proof this register knows. Nothing was changed. The kinds are {string.Join(", ", PassKinds.Proofs)}.");

    public static RefusedException Misused(Pass pass, Matrix matrix, MatrixState? state, Misuse what, MatrixState? other)
    {
        var block = $"{char.ToUpperInvariant(matrix.CalledPart[0])}{matrix.CalledPart[1..]}";

        return what switch
        {
            Misuse.AfterItsEnd => new RefusedException("matrix-cannot-print", $"{block} was {matrix.Fate.Replace('-', ' ')} ({matrix.FateDate}), before pass {Figure(pass)} ({pass.Done}). Nothing was changed. Correct the date, or the fate with `edreg matrix fate` and --correct."),
            Misuse.StateNotReached => new RefusedException("state-not-yet", $"{block} came to state {state?.Name} {state?.Reached}, after pass {Figure(pass)} ({pass.Done}). Nothing was changed. Correct the date, or name the state it was in."),
            Misuse.StateLeft => new RefusedException("states-run-back", $"{block} had gone on to state {other?.Name} ({other?.Reached}) before pass {Figure(pass)} ({pass.Done}), so it no longer printed state {state?.Name}. Nothing was changed. Correct the date, or name the state it was in."),
            _ => new RefusedException("states-run-back", $"{block} is a reduction and printed state {other?.Name} in an earlier pass, so it cannot print state {state?.Name} in pass {Figure(pass)}: what is cut away does not come back. Nothing was changed. Name the state it was in."),
        };
    }

    /// <summary>Refuses words and counts that no pass has.</summary>
    internal static void DemandWords(Work work, Pass pass)
    {
        foreach (var (what, count) in new[]
        {
            ("Sheets in", pass.SheetsIn), ("Sheets added", pass.Added), ("Sheets out", pass.SheetsOut), ("Sheets spoiled", pass.Spoiled), ("Sheets held out", pass.HeldOut), ("Sheets of make-ready", pass.MakeReady),
        })
        {
            if (count is < 0 or > Most)
            {
                throw WorkRefusals.BadCount(what);
            }
        }

        if (pass.SpoiledBy.FirstOrDefault(one => work.OwnWords.FaultOf(one.Word) is null) is { } fault)
        {
            throw ImpressionRefusals.UnknownFault(fault.Word, work.OwnWords);
        }

        if (pass.HeldOutAs.FirstOrDefault(one => !PassKinds.IsProof(work, one.Word)) is { } proof)
        {
            throw UnknownProof(proof.Word);
        }
    }

    private static string Figure(Pass pass) => pass.Ordinal.ToString(CultureInfo.InvariantCulture);

    private static string WentIn(Pass pass) => string.Create(CultureInfo.InvariantCulture, $"{pass.SheetsIn} in and {pass.Added ?? 0} added");

    private static string Parts(Pass pass) => string.Join(", ", new[] { Part(pass.SheetsOut, "out"), Part(pass.Spoiled, "spoiled"), Part(pass.HeldOut, "held out") }.OfType<string>());

    private static string? Part(int? count, string what) => count is { } n ? string.Create(CultureInfo.InvariantCulture, $"{n} {what}") : null;
}
