using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Impressions;

/// <summary>
/// That the pencil itself was changed: what stood on the sheet, what stands there now, why and when. That the record was mistyped is another
/// deed (<see cref="WhatStandsOnIt"/>): it leaves the sheet as it is, and no trace on it.
/// </summary>
public sealed record Alteration
{
    public static IReadOnlyList<string> Whats { get; } = ["number", "title", "signature", "inscription", "other"];

    /// <summary>One of <see cref="Whats"/>.</summary>
    public required string What { get; init; }

    /// <summary>What stood there; null takes what is on record.</summary>
    public string? Was { get; init; }

    /// <summary>What stands there since; null is that it was rubbed out.</summary>
    public string? Became { get; init; }

    public string? Reason { get; init; }

    public RecordedDate Changed { get; init; } = RecordedDate.None;

    /// <exception cref="RefusedException">alteration-changes-nothing, alteration-of-nothing or inscription-not-there.</exception>
    public void Record(Work work, Impression sheet, Deed deed)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(deed);

        var inscription = What == "inscription" ? InscriptionOf(sheet) : null;
        var was = Was ?? inscription?.Text ?? OnRecord(sheet);

        if (was is null && Became is null)
        {
            throw AlterationRefusals.OfNothing(sheet, What);
        }

        if (was == Became)
        {
            throw AlterationRefusals.ChangesNothing(sheet, was!);
        }

        var id = deed.NewId("sheet_change");
        deed.Set("sheet_change", id,
            ("impression", sheet.Id), ("ordinal", sheet.Changes.Count == 0 ? 1 : sheet.Changes.Max(change => change.Ordinal) + 1),
            ("what", What), ("was", was), ("became", Became), ("reason", Reason));
        deed.SetDate("sheet_change", id, "changed", Changed);
        Now(work, sheet, inscription, deed);
    }

    /// <summary>The last change of a sheet never happened: it goes, and the record says again what stood there before.</summary>
    /// <exception cref="RefusedException">alteration-not-there.</exception>
    public static void TakeBack(Work work, Impression sheet, Deed deed)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(deed);

        var last = sheet.Changes is [.., var change] ? change : throw AlterationRefusals.NotThere(sheet);
        deed.Unset("sheet_change", last.Id);

        // What was recorded of the sheet since is not the change's to take away.
        if (last.What is "number" && sheet.Pencilled == last.Became)
        {
            deed.SetPencilled(sheet.Id, last.Was, work.OwnWords, work.NumberingOf(sheet)?.Notation);
        }
        else if (last.What is "title" && sheet.Titled == last.Became)
        {
            deed.Set("impression", sheet.Id, ("titled", last.Was));
        }
        else if (last.What is "signature" && sheet.Signature == last.Became)
        {
            deed.Set("impression", sheet.Id, ("signature", last.Was), ("signed", last.Was is null ? "no" : "yes"));
        }
        else if (last.What is "inscription" && sheet.Inscriptions.FirstOrDefault(one => one.Text == last.Became) is { } inscription)
        {
            deed.SetInscription(inscription.Id, last.Was, work.OwnWords, inscription.Roles);
        }
    }

    private string? OnRecord(Impression sheet) => What switch
    {
        "number" => sheet.Pencilled,
        "title" => sheet.Titled,
        "signature" => sheet.Signature,
        _ => null,
    };

    private Inscription? InscriptionOf(Impression sheet) =>
        Was is null && sheet.Inscriptions.Count <= 1 ? (sheet.Inscriptions is [var only] ? only : null)
        : sheet.Inscriptions.FirstOrDefault(one => one.Text == Was) ?? throw AlterationRefusals.NoSuchInscription(sheet, Was);

    private void Now(Work work, Impression sheet, Inscription? inscription, Deed deed)
    {
        switch (What)
        {
            case "number":
                deed.SetPencilled(sheet.Id, Became, work.OwnWords, work.NumberingOf(sheet)?.Notation);
                break;
            case "title":
                deed.Set("impression", sheet.Id, ("titled", Became));
                break;
            case "signature":
                deed.Set("impression", sheet.Id, ("signature", Became), ("signed", Became is null ? "no" : "yes"));
                break;
            case "inscription" when inscription is not null:
                deed.SetInscription(inscription.Id, Became, work.OwnWords, inscription.Roles);
                break;
            case "inscription":
                var id = deed.NewId("inscription");
                deed.Set("inscription", id, ("impression", sheet.Id), ("ordinal", 1), ("side", "unknown"), ("manner", "unknown"));
                deed.SetInscription(id, Became, work.OwnWords);
                break;
        }
    }
}
