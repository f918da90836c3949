using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Documents;

/// <summary>What the register says of an impression today, fact by fact, as a certificate discloses it. What is not known is said.</summary>
public static class CertificateFacts
{
    /// <summary>Stands for everything nobody knows.</summary>
    public const string NotKnown = "not known";

    /// <summary>Keys of what is stated only of sheets it is true of; a certificate issued before they were known says nothing of them.</summary>
    public static IReadOnlyList<string> WhereTrue { get; } =
    [
        "numbering", "rank", "estate", "on-demand", "printings", "short-edition", "posthumous", "variant", "hand-colouring", "ghost-of", "ghosts",
        "dedication", "replaces", "cancellation",
    ];

    /// <summary>Keys of what was so on the day of issue and may go on: an edition on demand is printed further, and a ghost pulled later.</summary>
    public static IReadOnlyList<string> OfTheDay { get; } = ["on-demand", "printings", "ghosts", "cancellation"];

    /// <summary>In reading order. Keys are permanent.</summary>
    /// <param name="work">The work whole.</param>
    /// <param name="impression">One of its impressions.</param>
    /// <param name="sizes">How sizes are written.</param>
    public static IReadOnlyList<CertificateFact> Of(Work work, Impression impression, SizeStyle sizes)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(impression);
        ArgumentNullException.ThrowIfNull(sizes);

        var run = work.RunOf(impression);
        var edition = work.EditionOf(impression);

        return
        [
            new("maker", Names(work.Makers)),
            new("title", work.TitleState == "untitled" ? "Untitled" : Known(work.Title)),
            new("matrix-year", MatrixText.Years(work.Matrices)),
            new("printed", Date(run?.Printed)),
            new("technique", Known(work.Technique)),
            new("paper", Known(run?.Paper)),
            .. OfSizes(run, sizes),
            new("number", NumberOf(work, impression)),
            .. Perhaps("numbering", work.NumberingOf(impression)?.Name),
            .. CertificateAlterations.Of(impression),
            .. CertificateSetParts.Of(work, impression),
            new("edition", EditionText.Size(work, edition)),
            .. OfTheEdition(work, edition),
            new("proofs", EditionText.Proofs(work, edition)),
            new("total", EditionText.Total(work, edition)),
            .. OfTheSheet(work, impression),
            new("state", string.IsNullOrWhiteSpace(run?.State) ? "no state recorded" : run.State.Trim()),
            new("signature", Signature(work, impression)),
            new("matrix-fate", MatrixText.Fates(work.Matrices)),
            .. Perhaps("cancellation", SheetText.Cancellation(work)),
            new("printer", Names(work.InRole(Role.Printer.Word))),
            new("workshop", Names(work.InRole(Role.Workshop.Word))),
            .. work.InRole("estate").Any() ? [new("estate", Names(work.InRole("estate")))] : Array.Empty<CertificateFact>(),
            new("code", impression.ShownCode),
        ];
    }

    /// <summary>The only facts that are worded otherwise where a register writes sizes otherwise.</summary>
    internal static IEnumerable<CertificateFact> OfSizes(PrintRun? run, SizeStyle sizes) =>
    [
        new("image-size", SizeText.OnCertificate(run?.ImageHeight, run?.ImageWidth, sizes)),
        new("sheet-size", SizeText.OnCertificate(run?.SheetHeight, run?.SheetWidth, sizes)),
    ];

    /// <summary>What is disclosed of the edition where it is so: its rank, printing on demand, several runs, that it is short.</summary>
    internal static IEnumerable<CertificateFact> OfTheEdition(Work work, Edition? edition) => edition is null ? [] :
    [
        .. Perhaps("rank", RankText.WithThoseBefore(work, edition)),
        .. Perhaps("on-demand", PrintingsText.OnDemand(work, edition)),
        .. Perhaps("printings", PrintingsText.Runs(work, edition)),
        .. Perhaps("short-edition", PrintingsText.Short(edition)),
    ];

    private static IEnumerable<CertificateFact> OfTheSheet(Work work, Impression impression) =>
    [
        .. Perhaps("posthumous", work.RunOf(impression)?.Posthumous switch { "yes" => "printed after the artist's death", "unknown" => NotKnown, _ => null }),
        .. Perhaps("variant", impression.Variant),
        .. Perhaps("hand-colouring", SheetText.HandColouring(work, impression)),
        .. Perhaps("ghost-of", SheetText.GhostOf(work, impression)),
        .. Perhaps("ghosts", SheetText.Ghosts(work, impression)),
        .. Perhaps("dedication", SheetText.PublicDedication(work, impression)),
        .. Perhaps("replaces", SheetText.Replaces(work, impression)),
    ];

    private static IEnumerable<CertificateFact> Perhaps(string key, string? value) => string.IsNullOrWhiteSpace(value) ? [] : [new CertificateFact(key, value.Trim())];

    internal static string Date(RecordedDate? date) => date is null ? NotKnown : DateInWords.Of(date);

    private static string Known(string? text) => string.IsNullOrWhiteSpace(text) ? NotKnown : text.Trim();

    private static string Names(IEnumerable<Person> people) => Known(string.Join(", ", people.Select(person => person.CreditText)));

    private static string NumberOf(Work work, Impression impression) =>
        !string.IsNullOrWhiteSpace(impression.Pencilled) ? impression.Pencilled.Trim()
        : work.NumberingOf(impression)?.Spell(impression.Number) is { } number ? $"{number}, not yet pencilled"
        : "not numbered";

    // A pupil's signature spells out the name that the policy keeps private.
    private static string Signature(Work work, Impression impression) => impression.Signed switch
    {
        "yes" => string.IsNullOrWhiteSpace(impression.Signature) || work.Makers.Any(maker => maker.IsProtected)
            ? "signed by hand in pencil"
            : $"signed by hand in pencil: {impression.Signature.Trim()}",
        "no" => "not signed",
        _ => NotKnown,
    };
}
