using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Impressions;

/// <summary>What someone read on a sheet: number, title and signature as written, and any other inscription. Null says nothing about it.</summary>
public sealed record WhatStandsOnIt
{
    /// <summary>The pencil says exactly what the register would have spelled: number at left, title in the middle.</summary>
    public bool AsSpelled { get; init; }

    public string? Pencilled { get; init; }

    public string? Titled { get; init; }

    /// <summary>yes, no or unknown.</summary>
    public string? Signed { get; init; }

    public string? Signature { get; init; }

    public string? Inscription { get; init; }

    public string Side { get; init; } = "front";

    public string Manner { get; init; } = "written";

    public string? Position { get; init; }

    public string? Condition { get; init; }

    private bool SaysNothing => !AsSpelled && (Pencilled ?? Titled ?? Signed ?? Signature ?? Inscription ?? Condition) is null;

    /// <exception cref="RefusedException">inscription-empty, one-sheet-only or sheet-not-numbered.</exception>
    public void Record(Work work, IReadOnlyList<Impression> sheets, Deed deed)
    {
        if (SaysNothing)
        {
            throw ImpressionRefusals.NothingToInscribe();
        }

        if (sheets.Count > 1 && Pencilled is not null)
        {
            throw ImpressionRefusals.OneSheetOnly("The pencilled number");
        }

        foreach (var sheet in sheets)
        {
            Record(work, sheet, deed);
        }
    }

    private void Record(Work work, Impression sheet, Deed deed)
    {
        if (AsSpelled)
        {
            var spelled = work.NumberingOf(sheet)?.Spell(sheet.Number) ?? throw ImpressionRefusals.NotNumberedYet(sheet);
            deed.Set("impression", sheet.Id, ("titled", work.Title));
            SetPencilled(Pencilled ?? spelled);
        }
        else if (Pencilled is not null)
        {
            SetPencilled(Pencilled);
        }

        Set("titled", Titled);
        Set("signature", Signature);
        Set("signed", Signed ?? (Signature is null ? null : "yes"));
        Set("condition", Condition);

        if (Inscription is not null)
        {
            var id = deed.NewId("inscription");
            deed.Set("inscription", id,
                ("impression", sheet.Id), ("ordinal", sheet.Inscriptions.Count + 1), ("side", Side), ("manner", Manner), ("position", Position));
            deed.SetInscription(id, Inscription, work.OwnWords);
        }

        void SetPencilled(string text) => deed.SetPencilled(sheet.Id, text, work.OwnWords, work.NumberingOf(sheet)?.Notation);

        void Set(string fact, string? value)
        {
            if (value is not null)
            {
                deed.Set("impression", sheet.Id, (fact, value));
            }
        }
    }
}
