using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Impressions;

/// <summary>A proposal with the pile it is of.</summary>
public sealed record KeptProposed(Work Work, PrintRun Run, Proposal Proposal);

/// <summary>Proposes which sheets of a pile to keep, by their grades; only <see cref="Take"/> sorts anything.</summary>
public sealed class ProposeKept(RegisterStore store)
{
    /// <param name="work">The work.</param>
    /// <param name="run">The print run by its place among those of the work.</param>
    /// <param name="keep">How many are wanted.</param>
    /// <exception cref="Domain.RefusedException">work-not-found, run-not-found, proposal-too-few or proposal-nothing-graded.</exception>
    public KeptProposed Run(long work, int run, int keep) => store.Read(reader => Of(reader.WorkOrRefuse(work), run, keep));

    /// <summary>Sorts what is proposed as kept, as it stands under the lock; no other sheet is touched. Answers the proposal.</summary>
    public KeptProposed Take(long work, int run, int keep) => store.Write("sort-pulls", writing =>
    {
        var proposed = Of(writing.Read.WorkOrRefuse(work), run, keep);
        SortingDeeds.Sort(proposed.Work, [.. proposed.Proposal.Sheets.Select(one => one.Sheet)], "kept", fault: null, note: null, writing.On(Domain.Facts.Root.Work(work)));

        return proposed;
    });

    /// <summary>Sheets by their codes, for another deed.</summary>
    public static ImpressionChoice ChoiceOf(Proposal proposal) => new() { Sheets = string.Join(", ", proposal.Sheets.Select(one => one.Sheet.ShownCode)) };

    private static KeptProposed Of(Work work, int ordinal, int keep)
    {
        var run = work.Runs.FirstOrDefault(one => one.Ordinal == ordinal) ?? throw WorkRefusals.NoSuchRun(work, ordinal);

        return new KeptProposed(work, run, Proposal.Of(work, run, keep));
    }
}
