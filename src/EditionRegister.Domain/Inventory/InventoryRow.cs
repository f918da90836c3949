using EditionRegister.Domain.People;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Inventory;

/// <summary>One impression as a row of the inventory in machine form: one value for each of <see cref="InventoryColumns"/>, null where there is none.</summary>
public static class InventoryRow
{
    /// <summary>Stands for a maker, a title or a place nobody knows; cataloguers set in square brackets what they supply themselves.</summary>
    public const string Unknown = "[unknown]";

    /// <summary>Stands for the title of a work that has none, so that a work called "Untitled" keeps its name.</summary>
    public const string Untitled = "[untitled]";

    /// <summary>Stands for the place of a sheet that is gone for good.</summary>
    public const string Gone = "[gone]";

    /// <summary>Between the inscriptions of one sheet.</summary>
    public const string BetweenInscriptions = " ⏎ ";

    /// <param name="work">The work whole.</param>
    /// <param name="impression">One of its impressions.</param>
    /// <param name="owners">Adds owner, net price and notes, and names private holders.</param>
    public static string?[] Of(Work work, Impression impression, bool owners)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(impression);

        var run = work.RunOf(impression);
        var edition = work.EditionOf(impression);
        var asking = PriceText.Amount(impression.Asking, impression.AskingCurrency);

        string?[] row =
        [
            impression.ShownCode,
            MakerOf(work),
            TitleOf(work),
            Filled(work.Year.Text),
            Filled(work.Technique),
            Filled(run?.Paper),
            Filled(run?.State),
            impression.Standing,
            NumberOf(work, impression),
            KindOf(edition),
            SizeOf(edition),
            Filled(run?.Printed.Text),
            impression.Signed,
            Inscriptions(impression),
            Millimetres(run?.ImageHeight),
            Millimetres(run?.ImageWidth),
            Millimetres(run?.SheetHeight),
            Millimetres(run?.SheetWidth),
            Filled(impression.Condition),
            Keeping.PlaceOf(work, impression),
            Keeping.HolderOf(work, impression, owners),
            FreeToSell.Of(work, impression),
            asking,
            Filled(impression.AskingCurrency),
        ];

        return owners ? [.. row, Keeping.OwnerOf(work, impression), PriceText.Net(impression), Notes(work, impression)] : row;
    }

    // What has no column of its own; read in again it stays a note.
    private static string? Notes(Work work, Impression impression) =>
        Filled(string.Join("; ", [.. Filled(impression.Note) is { } note ? (string[])[note] : [], .. SheetText.Of(work, impression).Select(line => $"{char.ToLowerInvariant(line.Label[0])}{line.Label[1..]}: {line.Value}")]));

    internal static string MakerOf(Work work) =>
        work.Makers.Any() ? string.Join(", ", work.Makers.Select(maker => maker.CreditText)) : Unknown;

    internal static string TitleOf(Work work) => work.TitleState == "untitled" ? Untitled : Filled(work.Title) ?? Unknown;

    private static string? NumberOf(Work work, Impression impression) =>
        Filled(impression.Pencilled) ?? work.NumberingOf(impression)?.Spell(impression.Number);

    private static string? KindOf(Edition? edition) => edition is null ? null : edition.Extent switch
    {
        "partly-known" => $"{edition.Kind}, partly known",
        "someone-elses" => $"{edition.Kind}, someone else's",
        _ => edition.Kind,
    };

    // What stands behind the stroke on most sheets: the arabic numbering's, where there is one.
    private static string? SizeOf(Edition? edition)
    {
        var inSize = edition?.Numberings.Where(numbering => numbering.Kind is { InSize: true }).ToList() ?? [];

        var usual = inSize.FirstOrDefault(numbering => numbering.Notation == Notation.Arabic) ?? inSize.FirstOrDefault();

        return usual?.Size is { } size ? InWords.Figure(size) : SizeNotSure.Bare(usual?.Hedge, usual?.HedgedSize);
    }

    private static string? Inscriptions(Impression impression) =>
        Filled(string.Join(BetweenInscriptions, impression.Inscriptions.Select(inscription => inscription.Text).Where(text => !string.IsNullOrEmpty(text))));

    private static string? Millimetres(long? micrometres) => SizeText.LengthOf(micrometres)?.Millimetres;

    private static string? Filled(string? text) => string.IsNullOrWhiteSpace(text) ? null : text;
}
