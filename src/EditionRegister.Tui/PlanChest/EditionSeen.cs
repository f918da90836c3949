using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases;

namespace EditionRegister.Tui.PlanChest;

/// <summary>An edition as it was read: its work, the map of its numbers, and what checks find in the work.</summary>
internal sealed record EditionSeen(Work Work, Edition Edition, NumberMap Map, IReadOnlyList<Finding> Findings)
{
    /// <summary>Reads it; goes through the queue.</summary>
    /// <exception cref="Domain.RefusedException">edition-not-found.</exception>
    public static EditionSeen Read(Register register, long id)
    {
        var (work, edition) = register.LookAround.Edition(id);

        return new EditionSeen(work, edition, NumberMap.Of(work, edition), EditionFindings.Of(register, work));
    }

    /// <summary>Findings that belong to no cell and to no numbering here: about the work, its matrices and print runs, or the edition as a whole.</summary>
    public IEnumerable<Finding> Besides => Findings.Where(finding => finding.Subject.Kind is not ("impression" or "numbering")
        && (finding.Subject.Kind != "edition" || finding.Subject.Id == Edition.Id));

    /// <summary>edition 3 of “Harbour”, within a sentence.</summary>
    public string CalledEdition => $"edition {Counted.Figure(Edition.Id)} of {Called.Work(Work)}";

    /// <summary>Whether a sheet can still get a number.</summary>
    public bool HasOpenNumber => Map.Numberings.Any(numbering => numbering.Numbering.Size is null || numbering.Cells.Any(cell => cell is { Sheet: null, Letter: 'o' or '?' }));

    public IReadOnlyList<Finding> Of(Impression? sheet) =>
        sheet is null ? [] : [.. Findings.Where(finding => EditionFindings.IsAbout(finding, sheet))];

    public IReadOnlyList<Finding> Of(Numbering numbering) =>
        [.. Findings.Where(finding => finding.Subject.Kind == "numbering" && finding.Subject.Id == numbering.Id)];

    /// <summary>Kept sheets that no number was given to yet, as they lie in the pile.</summary>
    public IEnumerable<Impression> ToBeNumbered => Work.Impressions.Where(sheet => sheet.IsKept && sheet.Number is null);
}
