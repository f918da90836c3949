using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Wording;

/// <summary>What one impression has several of: inscriptions, the steps of its two chains, documents, columns kept from a file.</summary>
public static class ImpressionTables
{
    /// <summary>All of them, in the order in which they are read; some have no rows.</summary>
    public static IReadOnlyList<ShownTable> All(Work work, Impression sheet) =>
        [SetsSaid.InCopy(work, sheet), Inscriptions(work, sheet), Changes(sheet), Whereabouts(work, sheet), Ownership(work, sheet), Reservations(work, sheet), Documents(sheet), Pictures(work, sheet), KeptColumns(sheet)];

    /// <summary>With how each was read, where something was that the number given does not say.</summary>
    public static ShownTable Inscriptions(Work work, Impression sheet)
    {
        var read = sheet.Inscriptions.Select(inscription => InscriptionSaid.OfInscription(work, sheet, inscription)).ToList();
        var isRead = read.Exists(one => one is not null);

        return new ShownTable(
            "What stands on it:",
            [new("side"), new("manner"), new("where"), new("text"), .. isRead ? [new("read as")] : (ShownColumn[])[]],
            [.. sheet.Inscriptions.Select((inscription, at) => (string[])[inscription.Side, inscription.Manner, inscription.Position ?? "", inscription.Text ?? "(erased)", .. isRead ? [read[at] ?? ""] : (string[])[]])]);
    }

    /// <summary>What was altered on the paper itself, in the order in which it was recorded.</summary>
    public static ShownTable Changes(Impression sheet) => new(
        "Changed on the sheet:",
        [new("what"), new("was"), new("became"), new("when"), new("why")],
        [.. sheet.Changes.Select(change => (string[])[change.What, change.Was ?? "", change.Became ?? "", change.Changed.ToString(), change.Reason ?? ""])]);

    /// <summary>In the order in which the steps were recorded.</summary>
    public static ShownTable Whereabouts(Work work, Impression sheet) => new(
        "Where it was:",
        [new("step", IsRight: true), new("what"), new("when"), new("where"), new("terms and notes")],
        [
            .. sheet.Whereabouts.Select(link => (string[])
            [
                Counted.Figure(link.Ordinal),
                MoveKind.Of(link.Kind)?.Name ?? link.Kind,
                link.Moved.ToString(),
                WhereInWords.Of(work, link.To),
                Terms(link),
            ]),
        ]);

    /// <summary>In the order in which the steps were recorded.</summary>
    public static ShownTable Ownership(Work work, Impression sheet) => new(
        "Whose it was:",
        [new("step", IsRight: true), new("what"), new("when"), new("whose"), new("price", IsRight: true), new("net", IsRight: true), new("sold by and notes")],
        [
            .. sheet.Ownership.Select(link => (string[])
            [
                Counted.Figure(link.Ordinal),
                MoveKind.Of(link.Kind)?.Name ?? link.Kind,
                link.Passed.ToString(),
                WhereInWords.OwnerOf(work, link.To),
                PricesShown.Show(link.Price, link.Currency) ?? "",
                PricesShown.Show(link.Net, link.Currency) ?? "",
                Together(link.Agent is { } agent ? work.Book.NameOf(agent) : null, link.Note),
            ]),
        ]);

    public static ShownTable Reservations(Work work, Impression sheet) => new(
        "Kept for someone:",
        [new("since"), new("for whom"), new("until"), new("standing"), new("note")],
        [
            .. sheet.Reservations.Select(kept => (string[])
            [
                kept.Made.ToString(),
                kept.Person is { } person ? WhereInWords.PersonNamed(person, work.Book) : "somebody not named",
                kept.Until.IsKnown ? kept.Until.ToString() : "",
                kept.Standing,
                kept.Note ?? "",
            ]),
        ]);

    public static ShownTable Documents(Impression sheet) => new(
        "Documents:",
        [new("serial"), new("kind"), new("issued"), new("standing")],
        [.. sheet.Documents.Select(document => (string[])[document.Serial, document.Kind, document.Issued.ToString(), document.Standing])]);

    /// <summary>Those that are shown; nothing for most sheets.</summary>
    public static ShownTable Pictures(Work work, Impression sheet) => new(
        "Pictures:",
        [new("picture", IsRight: true), new("file"), new("kind"), new("pixels", IsRight: true), new("caption")],
        [
            .. work.Pictures.Where(picture => picture.Impression == sheet.Id && picture.IsShown).Select(picture => (string[])
                [Counted.Figure(picture.Id), picture.FileName ?? "(erased)", PicturesSaid.Kind(picture), PicturesSaid.Pixels(picture), picture.Caption ?? ""]),
        ]);

    public static ShownTable KeptColumns(Impression sheet) => new(
        "Columns of the file it was read in from:",
        [new("column"), new("value")],
        [.. sheet.KeptColumns.Select(kept => (string[])[kept.Header ?? "", kept.Value ?? ""])]);

    /// <summary>Until when, at what share, under which agreement, insured for how much, in which show, and what else is noted.</summary>
    public static string Terms(WhereaboutsLink link) => Together(
        link.Until.IsKnown ? $"until {link.Until}" : null,
        link.Rate is { } rate ? $"their share {Counted.Share(rate)}" : null,
        link.Agreement is { } agreement ? $"under “{agreement}”" : null,
        link.Value is null ? null : $"insured for {PricesShown.Show(link.Value, link.ValueCurrency)}",
        link.Show is { } show ? $"show {Counted.Figure(show)}" : null,
        link.Note);

    private static string Together(params string?[] parts) => string.Join(", ", parts.OfType<string>());
}
