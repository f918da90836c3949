using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>A sheet with the number it would take, and what would be pencilled under its image.</summary>
public sealed record RehearsedSheet(Impression Sheet, Numbering Numbering, PencilText Pencil);

/// <summary>Numbers of a numbering that no sheet is there for yet.</summary>
public sealed record NumbersWithoutSheet(Numbering Numbering, int Count);

/// <summary>What declaring an edition would come to, and numbering it as the pile lies: worked out on a copy of the work, by the same decisions.</summary>
public sealed record Rehearsal
{
    /// <summary>As it would stand.</summary>
    public required Work Work { get; init; }

    public required Edition Edition { get; init; }

    public required EditionTotals Totals { get; init; }

    /// <summary>Numbering by numbering, in the order of the numbers.</summary>
    public required IReadOnlyList<RehearsedSheet> Sheets { get; init; }

    public required IReadOnlyList<NumbersWithoutSheet> WithoutSheet { get; init; }

    /// <summary>Kept sheets that would get no number.</summary>
    public required IReadOnlyList<Impression> KeptWithout { get; init; }

    /// <summary>The edition, its proofs and its total as a certificate says them, by the permanent keys of those lines.</summary>
    public required IReadOnlyList<CertificateFact> Sentences { get; init; }

    /// <exception cref="RefusedException">Whatever declaring the edition would refuse.</exception>
    public static Rehearsal Of(Work work, NewEdition plan)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(plan);

        var declared = RehearsedFacts.Of(work, deed => plan.Declare(work, deed));
        var edition = declared.Editions[^1];
        var (numbered, sheets) = Number(declared, edition);

        return new Rehearsal
        {
            Work = numbered,
            Edition = edition,
            Totals = EditionTotals.Of(numbered, edition),
            Sheets = sheets,
            WithoutSheet =
            [
                .. from numbering in edition.Numberings
                   let open = numbering.IsOpen ? 0 : NumbersProposed.OpenIn(numbered, numbering)
                   where open > 0
                   select new NumbersWithoutSheet(numbering, open),
            ],
            KeptWithout = [.. numbered.Impressions.Where(sheet => sheet.IsKept && sheet.Numbering is null)],
            Sentences = [new("edition", EditionText.Size(numbered, edition)), .. CertificateFacts.OfTheEdition(numbered, edition), new("proofs", EditionText.Proofs(numbered, edition)), new("total", EditionText.Total(numbered, edition))],
        };
    }

    private static (Work Work, List<RehearsedSheet> Sheets) Number(Work work, Edition edition)
    {
        List<RehearsedSheet> sheets = [];

        foreach (var numbering in edition.Numberings)
        {
            var proposed = NumbersProposed.For(work, numbering);

            if (proposed.Count > 0)
            {
                var before = work;
                work = RehearsedFacts.Of(before, deed => NumberGiving.AsPiled(before, edition, numbering, proposed, deed));
                var numbered = work.Impressions.ToDictionary(sheet => sheet.Id);
                sheets.AddRange(proposed.Select(sheet => new RehearsedSheet(numbered[sheet.Id], numbering, PencilText.For(work, numbered[sheet.Id]))));
            }
        }

        return (work, sheets);
    }
}
