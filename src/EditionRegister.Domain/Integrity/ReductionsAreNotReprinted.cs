using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>What was cut away, cancelled or ground off printed nothing afterwards.</summary>
public sealed class ReductionsAreNotReprinted : IRule
{
    public string Name => nameof(ReductionsAreNotReprinted);

    public string Sentence => "A block cut away in printing printed one edition and nothing after it, and no matrix printed an edition after its end, but for a restrike from a cancelled one, which is disclosed.";

    public string Basis => "common practice, no source: in a reduction print the block is destroyed by printing, so that no restrike is possible";

    public IEnumerable<Finding> Check(Work work) =>
        from matrix in work.Matrices
        from run in work.Runs
        where run.Purpose is "edition" or "restrike" && MayHaveUsed(run, matrix)
        let finding = AfterItsEnd(work, matrix, run) ?? AfterTheEdition(work, matrix, run) ?? Restrike(work, matrix, run)
        where finding is not null
        select finding;

    private Finding? AfterItsEnd(Work work, Matrix matrix, PrintRun run) =>
        End(matrix) is { } end && !(matrix.Fate == "cancelled" && run.Purpose == "restrike") && matrix.FateDate.SurelyBefore(run.Printed) && !IsCutForThisRun(work, matrix, run)
            ? this.Find(
                Gravity(work),
                work.SubjectOf(run),
                $"{Run(work, run)} was printed {run.Printed}, after the {matrix.Called} was {end} ({matrix.FateDate}).",
                $"Correct the date that was mistyped, or what became of the {matrix.Called}.")
            : null;

    private Finding? AfterTheEdition(Work work, Matrix matrix, PrintRun run) =>
        IsCutAway(matrix) && work.Runs.FirstOrDefault(first => first.Purpose == "edition" && first.Printed.SurelyBefore(run.Printed)) is { } first
            ? this.Find(
                Gravity(work),
                work.SubjectOf(run),
                $"{Run(work, run)} was printed {run.Printed}, but the {matrix.Called} was cut away when print run {InWords.Figure(first.Ordinal)} was printed ({first.Printed}).",
                "Correct the date or the purpose of the run; if it was printed from another matrix, record that matrix.")
            : null;

    private Finding? Restrike(Work work, Matrix matrix, PrintRun run) =>
        IsCutAway(matrix) && run.Purpose == "restrike"
            ? this.Query(
                work.SubjectOf(run),
                $"{Run(work, run)} is a restrike, but the {matrix.Called} was cut away in printing.",
                "Correct the purpose of the run; if it was printed from another matrix, record that matrix.")
            : null;

    // Where the passes tell what the run was printed from, the others are no matter.
    private static bool MayHaveUsed(PrintRun run, Matrix matrix) =>
        !run.Passes.Any(pass => pass.Matrices.Count > 0)
        || run.Passes.Any(pass => pass.Matrices.Any(used => used.Matrix == matrix.Id) || (pass is { Kind: "printed", Matrices.Count: 0 }));

    // Once its edition is printed a reduction has lost its earlier colours, also where its end is not yet recorded.
    private static bool IsCutAway(Matrix matrix) => matrix is { IsReduction: true, Fate: "cut-away-in-printing" or "undecided" };

    // The last cut comes before the last colour: the edition a block was cut away for is printed after it.
    private static bool IsCutForThisRun(Work work, Matrix matrix, PrintRun run) =>
        matrix.Fate == "cut-away-in-printing" && !work.Runs.Any(other => other.Ordinal < run.Ordinal && other.Purpose == "edition");

    private static string? End(Matrix matrix) => matrix.Fate switch
    {
        "cut-away-in-printing" => "cut away",
        "cancelled" => "cancelled",
        "cut-up" => "cut up",
        "regrained-or-reclaimed" => "regrained or reclaimed",
        _ => null,
    };

    // Of several matrices the run may have used another one; that is for a person to say.
    private static Severity Gravity(Work work) => work.Matrices.Count == 1 ? Severity.Contradiction : Severity.Query;

    private static string Run(Work work, PrintRun run) => $"Print run {InWords.Figure(run.Ordinal)} of {work.Called}";
}
