using EditionRegister.Domain.Works;

namespace EditionRegister.Tui.Bench;

/// <summary>What a work wants next on its way to the last signature: the key, and what it does, in a sentence.</summary>
internal static class NextStep
{
    public static (string Key, string Sentence) Of(Work work)
    {
        var numbered = work.Impressions.Where(sheet => sheet.Number is not null).ToList();
        var unsigned = numbered.Count(sheet => !sheet.IsSigned);

        return work.Runs.FirstOrDefault(run => run.IsUnderWay(work.Impressions.Count(sheet => sheet.Run == run.Id))) is { } printing
                ? ("p", $"records the next pass of print run {Counted.Figure(printing.Ordinal)}; on its page l lays the pile after the last one.")
            : work.Impressions.Count(sheet => sheet.Standing == "pulled") is > 0 and var unsorted ? ("o", $"sorts the {Counted.Of(unsorted, "pull")} not sorted yet: kept, spare or left out.")
            : work.Runs.Count == 0 && work.Matrices.Count == 0 ? ("b", "records the block, plate or screen it is printed from; or n a print run at once.")
            : work.Runs.Count == 0 ? ("n", "records a print run: what was counted; every sheet gets its code.")
            : work.Impressions.Any(sheet => sheet.IsKept) && work.Editions.Count == 0 ? ("a", "rehearses and declares the edition, once every pull is sorted.")
            : unsigned > 0 ? ("g", $"goes on signing: {Counted.Sheets(unsigned)} not signed yet.")
            : work.Editions.Count > 0 && numbered.Count == 0 ? ("g", "gives the numbers and signs, sheet by sheet.")
            : numbered.Count > 0 && work.Matrices.FirstOrDefault(matrix => matrix.Fate == "undecided") is { } matrix ? ("d", $"prints certificates and labels; f on the {matrix.Called} states what became of it.")
            : numbered.Count > 0 ? ("d", "prints certificates and labels; Enter on the edition opens its map.")
            : ("n", "records another print run.");
    }
}
