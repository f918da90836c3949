using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>Finds the edition and numbering in the register that a file adds to.</summary>
internal static class KnownEditions
{
    public static Edition? Edition(Work? work, ListedEdition listed) =>
        work?.Editions.FirstOrDefault(edition => edition.Kind == listed.Kind && edition.Extent == listed.Extent && !(edition.Kind == "unique" && IsGiven(work, edition)))
        ?? (listed.Rows.All(row => row.EditionKind is null) && work?.Editions is [var first, ..] ? first : null);

    /// <summary>The one sheet of a unique edition is there: another is an edition of its own.</summary>
    private static bool IsGiven(Work work, Edition edition) => work.Impressions.Any(sheet => sheet.Number is not null && edition.Find(sheet.Numbering) is not null);

    public static Numbering? Numbering(Edition? edition, ListedNumbering listed) =>
        edition?.Numberings.FirstOrDefault(numbering => numbering.Kind == listed.Kind && numbering.Notation == listed.Notation);
}
