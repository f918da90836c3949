using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>What is said of an edition's rank fits how its sheets were printed. A restrike is a fact and no fault; that it is not disclosed is one.</summary>
public sealed class RanksFitThePrinting : IRule
{
    public string Name => nameof(RanksFitThePrinting);

    public string Sentence => "A sheet printed as a restrike, or after its maker's death, bears no number of a first edition, and one of the first printing none of a restrike.";

    public string Basis => "statutes on the sale of prints ask whether a print is posthumous or a restrike; which ones do differs from place to place";

    public IEnumerable<Finding> Check(Work work) =>
        from edition in work.Editions
        where edition.Rank is not null
        from run in work.Runs
        let why = Why(edition, run)
        where why is not null
        let sheets = work.Impressions.Count(sheet => sheet.Run == run.Id && sheet.Number is not null && edition.Find(sheet.Numbering) is not null)
        where sheets > 0
        select this.Query(
            work.SubjectOf(edition),
            $"{InWords.Count(sheets, "sheet", "sheets")} of print run {InWords.Figure(run.Ordinal)}, {why}, {(sheets == 1 ? "has a number" : "have numbers")} of {work.CalledEdition(edition)}, which is {Called(edition)}.",
            "Correct the purpose of the run or the rank of the edition; where they are right, take the numbers back and declare an edition of its own.");

    private static string? Why(Edition edition, PrintRun run) =>
        run.Posthumous == "yes" && edition.Rank is "first" ? "printed after the maker's death"
        : run.Purpose == "restrike" && edition.Rank is "first" ? "a restrike"
        : run.Purpose == "edition" && run.Posthumous != "yes" && PrintingOf.IsRestrike(edition) ? "printed for the edition"
        : run.Posthumous == "no" && edition.Rank is "posthumous" ? "printed in the maker's lifetime"
        : null;

    private static string Called(Edition edition) => edition.Rank switch { "first" => "a first edition", "restrike" => "a restrike", _ => "a posthumous edition" };
}
