using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Impressions;

/// <summary>A ghost: a second, paler sheet pulled from the same plate without inking it anew. It is a unique print of its own.</summary>
public static class Ghosts
{
    public const string Kind = "ghost-of";

    /// <param name="work">The work both are sheets of.</param>
    /// <param name="ghost">The paler sheet.</param>
    /// <param name="print">The sheet pulled before it.</param>
    /// <param name="made">When it was pulled.</param>
    /// <param name="note">As written.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <exception cref="RefusedException">ghost-of-itself, ghost-of-another-work, ghost-already or ghost-of-its-ghost.</exception>
    public static void Record(Work work, Impression ghost, Impression print, RecordedDate made, string? note, Deed deed)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(deed);

        if (ghost.Id == print.Id)
        {
            throw GhostRefusals.OfItself(ghost);
        }

        if (Of(ghost) is { } already)
        {
            throw GhostRefusals.Already(ghost, work.Impressions.FirstOrDefault(sheet => sheet.Id == already.Other) ?? print);
        }

        if (ComesFrom(work, print, ghost.Id))
        {
            throw GhostRefusals.OfItsGhost(ghost, print);
        }

        var id = deed.NewId("sheet_link");
        deed.Set("sheet_link", id, ("impression", ghost.Id), ("kind", Kind), ("other", print.Id), ("note", note));
        deed.SetDate("sheet_link", id, "made", made);
    }

    /// <exception cref="RefusedException">ghost-of-nothing.</exception>
    public static void TakeBack(Impression ghost, Deed deed)
    {
        ArgumentNullException.ThrowIfNull(deed);
        deed.Unset("sheet_link", (Of(ghost) ?? throw GhostRefusals.OfNothing(ghost)).Id);
    }

    public static SheetLink? Of(Impression sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);

        return sheet.Links.FirstOrDefault(link => link.Kind == Kind);
    }

    // A ghost of a ghost is one more, but no sheet is pulled after what was pulled after it.
    private static bool ComesFrom(Work work, Impression sheet, long from)
    {
        HashSet<long> met = [];

        for (var at = sheet; at is not null && met.Add(at.Id); at = Of(at) is { } link ? work.Impressions.FirstOrDefault(one => one.Id == link.Other) : null)
        {
            if (at.Id == from)
            {
                return true;
            }
        }

        return false;
    }
}
