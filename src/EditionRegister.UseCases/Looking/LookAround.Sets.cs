using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Sets;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Looking;

/// <summary>A set with its parts and its copies, those with a number first.</summary>
public sealed record SetSeen(Work Work, PrintSet Set, IReadOnlyList<Impression> Copies)
{
    /// <summary>The sheet of a part in a copy; null where none lies in it.</summary>
    public static SetSheet? In(Impression copy, SetPart part) => copy.SetSheets.FirstOrDefault(sheet => sheet.IsIn && sheet.Work == part.Work);

    /// <summary>How many of the parts lie in a copy.</summary>
    public int Gathered(Impression copy) => Set.Parts.Count(part => In(copy, part) is not null);
}

public sealed partial class LookAround
{
    /// <exception cref="Domain.RefusedException">work-not-found or set-not-made.</exception>
    public SetSeen Set(long work) => store.Read(reader => Seen(reader.WorkOrRefuse(work)));

    /// <summary>Every set, in the order in which the works were recorded.</summary>
    public IReadOnlyList<SetSeen> Sets() => store.Read(reader => reader.SetWorks().Select(reader.WorkOrRefuse).Select(Seen).ToList());

    private static SetSeen Seen(Work work) => new(
        work,
        SetDeeds.Of(work),
        [.. work.Editions.SelectMany(edition => Signing.Order(work, edition)), .. work.Impressions.Where(sheet => sheet.Number is null && (sheet.IsKept || sheet.SetSheets.Count > 0))]);
}
