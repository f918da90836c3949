using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Impressions;

/// <summary>A signing session: the numbered sheets of an edition in the order of their numbers, and what is to be pencilled on each.</summary>
public static class Signing
{
    /// <summary>Every sheet that has a number, numbering by numbering.</summary>
    public static IReadOnlyList<Impression> Order(Work work, Edition edition) =>
    [
        .. from numbering in edition.Numberings
           from sheet in work.Impressions
           where sheet.Numbering == numbering.Id && sheet.Number is not null
           orderby numbering.Ordinal, sheet.Number
           select sheet,
    ];

    /// <summary>Those of them that are not signed.</summary>
    public static IReadOnlyList<Impression> Left(Work work, Edition edition) => [.. Order(work, edition).Where(sheet => !sheet.IsSigned)];

    /// <summary>The line for a sheet: what stands on it comes first, then the signature as said, then as the work's sheets were signed before, then the maker's name.</summary>
    public static PencilText PencilFor(Work work, Impression sheet, string? signature)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(sheet);

        var text = PencilText.For(work, sheet);
        var usual = signature ?? work.Impressions.LastOrDefault(other => other.IsSigned && other.Signature is not null)?.Signature;

        return sheet.Signature is null && usual is not null ? text with { Signature = usual } : text;
    }

    /// <summary>What is recorded once a sheet is signed so: what stands there already, as somebody read it, is not spelled anew.</summary>
    public static WhatStandsOnIt SignedSo(Impression sheet, PencilText pencil)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(pencil);

        return new WhatStandsOnIt { AsSpelled = sheet.Pencilled is null, Signed = "yes", Signature = pencil.Signature.Length == 0 ? null : pencil.Signature };
    }
}
