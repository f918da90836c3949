using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>No two sheets of one numbering bear the same number.</summary>
public sealed class NumbersAreUnique : IRule
{
    private const string Remedy =
        "Lay the sheets side by side; correct the record that was mistyped, or record what is changed on the sheet.";

    public string Name => nameof(NumbersAreUnique);

    public string Sentence => "No two sheets of one numbering bear the same number, in pencil or in the register.";

    public string Basis => "Tamarind definitions, after a second-hand copy: each number of an edition is on one impression, and there is exactly one bon à tirer";

    public IEnumerable<Finding> Check(Work work)
    {
        var claims = PencilClaim.Of(work).ToList();

        return [.. Pencilled(work, claims), .. BonsATirer(work, claims), .. Given(work)];
    }

    private IEnumerable<Finding> Pencilled(Work work, IEnumerable<PencilClaim> claims) =>
        from claim in claims
        where claim.Says.Number is not null
        group claim by Claimed(claim) into same
        where same.Count() > 1
        let sheets = same.ToList()
        let number = sheets[0].Numbering?.Spell(sheets[0].Says.Number) ?? sheets[0].Says.ToString()
        select this.Find(
            Gravity(sheets),
            work.SubjectOf(sheets[0].Sheet),
            $"{number} of {work.CalledEdition(sheets[0].Edition)} is pencilled on {Sheets(sheets)}.{Destroyed(sheets)}",
            Remedy);

    // Of someone else's edition we may hold sheets of two editions under one roof: there the size beside the number tells them apart.
    private static ClaimedNumber Claimed(PencilClaim claim) => new(
        claim.Numbering?.Id ?? 0,
        claim.Says.Kind.Word,
        claim.Says.Notation.Word,
        claim.Says.Number ?? 0,
        claim.Edition is { IsWhole: true } ? 0 : claim.Says.Of ?? 0);

    private static Severity Gravity(List<PencilClaim> sheets) =>
        sheets.Count(claim => !claim.Sheet.IsDestroyed) < 2 ? Severity.Note
        : sheets.All(claim => claim.IsRecorded && claim.Edition is { IsOurs: true }) ? Severity.Contradiction
        : Severity.Query;

    private static string Sheets(List<PencilClaim> sheets) =>
        $"{InWords.Figure(sheets.Count)} sheets: {InWords.List([.. sheets.Select(claim => claim.Sheet.ShownCode)])}";

    private static string Destroyed(List<PencilClaim> sheets) =>
        sheets.Where(claim => claim.Sheet.IsDestroyed).Select(claim => claim.Sheet.ShownCode).ToList() is { Count: > 0 } destroyed
            ? $" Destroyed since: {InWords.List(destroyed)}."
            : "";

    private IEnumerable<Finding> BonsATirer(Work work, IEnumerable<PencilClaim> claims) =>
        from claim in claims
        where claim.Says.Kind == NumberingKind.BonATirer && claim.Says.Number is null && !claim.Sheet.IsDestroyed
        group claim by Claimed(claim) into same
        let sheets = same.ToList()
        where sheets.Count > (sheets[0].Numbering?.Size ?? 1)
        select this.Query(
            work.SubjectOf(sheets[0].Sheet),
            $"B.A.T. of {work.CalledEdition(sheets[0].Edition)} is pencilled on {Sheets(sheets)}, and an edition has one.",
            Remedy);

    private IEnumerable<Finding> Given(Work work) =>
        from sheet in work.Impressions
        where sheet.Numbering is not null && sheet.Number is not null
        group sheet by new GivenNumber(sheet.Numbering!.Value, sheet.Number!.Value) into same
        where same.Count() > 1
        let sheets = same.ToList()
        select this.Contradiction(
            work.SubjectOf(sheets[0]),
            $"{work.NumberShown(sheets[0])} of {work.CalledEdition(work.EditionOf(sheets[0]))} is given to {InWords.Figure(sheets.Count)} sheets: {InWords.List([.. sheets.Select(sheet => sheet.ShownCode)])}.",
            "Correct the record of the sheet whose number was mistyped.");

    /// <summary>What two sheets must not both bear; 0 where nothing is said.</summary>
    private sealed record ClaimedNumber(long Numbering, string Kind, string Notation, int Number, int Of);

    private sealed record GivenNumber(long Numbering, int Number);
}
