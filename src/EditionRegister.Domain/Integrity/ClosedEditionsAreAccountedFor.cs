using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>A closed edition of ours leaves no number open and says what became of the matrix.</summary>
public sealed class ClosedEditionsAreAccountedFor : IRule
{
    public string Name => nameof(ClosedEditionsAreAccountedFor);

    public string Sentence => "A closed edition leaves no number open, and says what became of the matrix.";

    public string Basis => "common practice, no source; that the matrix be cancelled afterwards is suggested by the Third International Congress of Plastic Arts, Vienna 1960";

    public IEnumerable<Finding> Check(Work work) =>
        from edition in work.Editions
        where edition is { IsClosed: true, IsWhole: true }
        from finding in NumbersLeftOpen(work, edition).Concat(MatricesUndecided(work, edition)).Concat(ClosedBeforeDeclared(work, edition))
        select finding;

    private IEnumerable<Finding> NumbersLeftOpen(Work work, Edition edition) =>
        from numbering in edition.Numberings
        let given = work.Given(numbering)
        let open = numbering.Numbers.Where(number => number.Fate == "open" && !given.Contains(number.Ordinal)).ToList()
        where open.Count > 0
        select this.Contradiction(
            work.SubjectOf(edition, numbering),
            $"{InWords.Numbers(numbering, open.Select(number => number.Ordinal))} of {work.CalledEdition(edition)} {(open.Count == 1 ? "is" : "are")} open, though the edition is closed.",
            "Give the number to its sheet, or say that it was never printed, is void, elsewhere or unknown.");

    private IEnumerable<Finding> MatricesUndecided(Work work, Edition edition) =>
        from matrix in work.Matrices
        where matrix.Fate == "undecided"
        select this.Query(
            work.SubjectOf(matrix),
            $"The edition of {work.CalledEdition(edition)} is closed, and what becomes of the {matrix.Called} is not yet decided.",
            $"Record what became of the {matrix.Called}: cancelled, kept uncancelled, lost, or unknown.");

    private IEnumerable<Finding> ClosedBeforeDeclared(Work work, Edition edition)
    {
        if (edition.ClosedOn.SurelyBefore(edition.Declared))
        {
            yield return this.Contradiction(
                work.SubjectOf(edition),
                $"The edition of {work.CalledEdition(edition)} was closed ({edition.ClosedOn}) before it was declared ({edition.Declared}).",
                "Correct the date that was mistyped.");
        }
    }
}
