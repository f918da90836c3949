using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>Finds the edition and numbering in the register that a file adds to.</summary>
internal static class KnownEditions
{
    public static Edition? Edition(Work? work, ListedEdition listed) =>
        work?.Editions.FirstOrDefault(edition => edition.Kind == listed.Kind && edition.Extent == listed.Extent)
        ?? (listed.Rows.All(row => row.EditionKind is null) && work?.Editions is [var first, ..] ? first : null);

    public static Numbering? Numbering(Edition? edition, ListedNumbering listed) =>
        edition?.Numberings.FirstOrDefault(numbering => numbering.Kind == listed.Kind && numbering.Notation == listed.Notation);
}
