using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>What may still be done to an edition once it is declared: its size mended, its numbers' fates stated, and closing it.</summary>
public static class NumberingDeeds
{
    private static readonly string[] Accounted = ["never-printed", "void", "elsewhere"];

    public static IReadOnlyList<string> Fates { get; } = ["open", "never-printed", "void", "elsewhere", "unknown"];

    /// <summary>Mends a size that was declared by mistake, until the first sheet is signed or leaves.</summary>
    /// <exception cref="RefusedException">edition-never-grows, reduction-never-grows, number-in-use, edition-closed-already.</exception>
    public static void MendSize(Work work, Edition edition, Numbering numbering, int size, Deed deed)
    {
        if (edition.IsClosed)
        {
            throw EditionRefusals.Closed(work);
        }

        var largest = numbering.Size ?? 0;

        if (size > largest && edition.IsWhole && Leaving.HasBegun(work, edition))
        {
            throw EditionRefusals.NeverGrows(numbering, work);
        }

        if (size > largest && work.IsReduction && size > NewEdition.SheetsAtHand(work))
        {
            throw EditionRefusals.ReductionNeverGrows(work, NewEdition.SheetsAtHand(work));
        }

        if (work.Impressions.FirstOrDefault(sheet => sheet.Numbering == numbering.Id && sheet.Number > size) is { } above)
        {
            throw EditionRefusals.ShrinkOverGiven(work.NumberOf(above), work);
        }

        deed.Set("numbering", numbering.Id, ("size", size), ("size_state", "stated"));

        if (numbering.Hedge is not null)
        {
            deed.Set("numbering", numbering.Id, ("hedge", FactValue.Null), ("hedged_size", FactValue.Null));
        }

        for (var ordinal = largest + 1; ordinal <= size && edition.IsOurs; ordinal++)
        {
            NewEdition.AddNumber(numbering.Id, ordinal, edition.IsWhole ? "open" : "unknown", deed);
        }

        foreach (var slot in numbering.Numbers.Where(slot => slot.Ordinal > size))
        {
            deed.Unset("number", slot.Id);
        }
    }

    /// <exception cref="RefusedException">note-missing, number-is-given or edition-closed-already.</exception>
    public static void StateFate(Work work, Edition edition, IReadOnlyList<NumberChosen> numbers, string fate, string? note, Deed deed)
    {
        if (edition.IsClosed)
        {
            throw EditionRefusals.Closed(work);
        }

        if (fate == "void" && string.IsNullOrWhiteSpace(note))
        {
            throw EditionRefusals.NoteNeeded();
        }

        foreach (var chosen in numbers)
        {
            if (work.Impressions.FirstOrDefault(sheet => sheet.Numbering == chosen.Numbering.Id && sheet.Number == chosen.Ordinal) is { } sheet)
            {
                throw EditionRefusals.GivenHasNoFate(chosen.Spelled, sheet);
            }

            var slot = chosen.Numbering.Numbers.FirstOrDefault(known => known.Ordinal == chosen.Ordinal);
            var id = slot?.Id ?? deed.NewId("number");
            deed.Set("number", id, ("numbering", chosen.Numbering.Id), ("ordinal", chosen.Ordinal), ("fate", fate), ("note", note));
        }
    }

    /// <exception cref="RefusedException">edition-not-accounted-for with everything that is missing, edition-not-ours-whole, edition-closed-already.</exception>
    public static void Close(Work work, Edition edition, RecordedDate on, Deed deed)
    {
        if (edition.IsClosed)
        {
            throw EditionRefusals.Closed(work);
        }

        if (!edition.IsWhole)
        {
            throw EditionRefusals.NotOursToClose(work);
        }

        if (Missing(work, edition).ToList() is { Count: > 0 } missing)
        {
            throw EditionRefusals.CannotClose(work, missing);
        }

        deed.Set("edition", edition.Id, ("closed", "yes"));
        deed.SetDate("edition", edition.Id, "closed_on", "closed", on);
    }

    private static IEnumerable<string> Missing(Work work, Edition edition)
    {
        foreach (var numbering in edition.Numberings)
        {
            var given = work.Impressions.Where(sheet => sheet.Numbering == numbering.Id).Select(sheet => sheet.Number).ToHashSet();
            var open = numbering.Numbers
                .Where(slot => !Accounted.Contains(slot.Fate) && !given.Contains(slot.Ordinal))
                .Select(slot => numbering.Spell(slot.Ordinal) ?? numbering.KindWord)
                .ToList();

            if (open.Count > 0)
            {
                yield return $"no sheet has {string.Join(", ", open)}";
            }
        }

        if (work.Matrices.Count == 0)
        {
            yield return "no matrix is recorded";
        }

        foreach (var matrix in work.Matrices.Where(matrix => matrix.Fate == "undecided"))
        {
            yield return $"what becomes of the {matrix.Called} is not decided";
        }
    }
}
