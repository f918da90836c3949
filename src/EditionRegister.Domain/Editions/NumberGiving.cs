using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>A number given to a sheet.</summary>
public sealed record NumberGiven(Impression Sheet, string Spelled);

/// <summary>Giving numbers to kept sheets, as they lie in the pile or by hand, and taking them back while that is honest.</summary>
public static class NumberGiving
{
    /// <summary>The first open numbers of a numbering, to kept sheets without a number in the order of the pile.</summary>
    public static IReadOnlyList<NumberGiven> AsPiled(Work work, Edition edition, Numbering numbering, IReadOnlyList<Impression>? chosen, Deed deed)
    {
        NotClosed(work, edition);
        var sheets = chosen ?? [.. work.Impressions.Where(sheet => sheet.IsKept && sheet.Number is null && PrintingOf.Fits(work, edition, sheet))];

        if (sheets.Count == 0)
        {
            throw EditionRefusals.NothingToNumber(work);
        }

        var open = OpenNumbers(work, numbering).Take(sheets.Count).ToList();

        if (open.Count == 0 || (chosen is not null && open.Count < sheets.Count))
        {
            throw EditionRefusals.AllGiven(numbering, work);
        }

        return [.. open.Zip(sheets, (number, sheet) => Give(work, numbering, number, sheet, deed))];
    }

    /// <summary>Each sheet the number beside it.</summary>
    public static IReadOnlyList<NumberGiven> ByHand(Work work, Edition edition, IReadOnlyList<Impression> sheets, IReadOnlyList<NumberChosen> numbers, Deed deed)
    {
        NotClosed(work, edition);

        if (sheets.Count != numbers.Count)
        {
            throw EditionRefusals.CountsDiffer(sheets.Count, numbers.Count);
        }

        if (numbers.GroupBy(number => number).FirstOrDefault(same => same.Count() > 1) is { Key: var twice })
        {
            throw EditionRefusals.NumberNamedTwice(twice.Spelled, work);
        }

        return [.. numbers.Zip(sheets, (number, sheet) => Give(work, number.Numbering, number.Ordinal, sheet, deed))];
    }

    /// <exception cref="RefusedException">number-stays: signed, certified or gone.</exception>
    public static void TakeBack(Work work, IReadOnlyList<Impression> sheets, Deed deed)
    {
        foreach (var sheet in sheets)
        {
            if (work.EditionOf(sheet) is { } edition)
            {
                NotClosed(work, edition);
            }

            if (Leaving.IsSignedOrHasLeft(sheet) || sheet.ValidCertificate is not null)
            {
                throw EditionRefusals.SignedOrLeft(sheet, work);
            }

            deed.Set("impression", sheet.Id, ("numbering", FactValue.Null), ("number", FactValue.Null));
            deed.SetPencilled(sheet.Id, null, work.OwnWords);
        }
    }

    /// <summary>Numbers chosen by name, in the order named.</summary>
    public static IReadOnlyList<NumberChosen> Choose(Work work, Edition edition, IReadOnlyList<NumberRange> ranges)
    {
        List<NumberChosen> chosen = [];

        foreach (var range in ranges)
        {
            var numbering = NumberingFor(work, edition, range);

            for (var ordinal = range.From ?? 1; ordinal <= (range.To ?? 1); ordinal++)
            {
                chosen.Add(Within(work, numbering, ordinal, range));
            }
        }

        return chosen;
    }

    internal static Numbering NumberingFor(Work work, Edition edition, NumberRange range)
    {
        var kind = range.Kind ?? NumberingKind.Numbered;

        return Named(work, edition, kind, range.Code is null ? range.Notation : null, range.Name, range.ToString());
    }

    /// <summary>The numbering of that kind and notation; where several differ by name, the one of that name, or without a name the one that has none.</summary>
    /// <exception cref="RefusedException">numbering-not-found or numbering-ambiguous.</exception>
    public static Numbering Named(Work work, Edition edition, NumberingKind kind, Notation? notation, string? name, string spelled)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(edition);

        var alike = edition.Numberings.Where(numbering => notation is not null && numbering.Kind == kind && numbering.Notation == notation).ToList();
        var named = name is null ? alike : [.. alike.Where(numbering => string.Equals(numbering.Name, name, StringComparison.OrdinalIgnoreCase))];

        return named is [var only] ? only
            : named.Count == 0 ? throw EditionRefusals.NoSuchNumbering(spelled, work)
            : named.FirstOrDefault(numbering => numbering.Name is null) ?? throw EditionRefusals.NumberingAmbiguous(spelled, named, work);
    }

    private static NumberChosen Within(Work work, Numbering numbering, int ordinal, NumberRange range) =>
        numbering.Size is { } size && ordinal > size
            ? throw EditionRefusals.BeyondSize(range.ToString(), numbering, work)
            : new NumberChosen(numbering, ordinal);

    /// <summary>Numbers a sheet could take, from the first; of an open numbering they go on without end.</summary>
    public static IEnumerable<int> OpenNumbers(Work work, Numbering numbering)
    {
        var given = work.Impressions.Where(sheet => sheet.Numbering == numbering.Id).Select(sheet => sheet.Number).ToHashSet();
        var declared = numbering.Numbers.Where(slot => slot.Fate is "open" or "unknown").Select(slot => slot.Ordinal);
        var further = numbering.IsOpen ? Enumerable.Range(1, Notation.Arabic.Largest).Except(numbering.Numbers.Select(slot => slot.Ordinal)) : [];

        return declared.Concat(further).Where(ordinal => !given.Contains(ordinal)).Order();
    }

    private static NumberGiven Give(Work work, Numbering numbering, int ordinal, Impression sheet, Deed deed)
    {
        var spelled = numbering.Spell(ordinal) ?? numbering.KindWord;
        MayBear(work, numbering, sheet);
        OfThisPrinting(work, numbering, sheet);

        if (work.Impressions.FirstOrDefault(other => other.Numbering == numbering.Id && other.Number == ordinal) is { } holder)
        {
            throw EditionRefusals.NumberGiven(spelled, holder, work);
        }

        var slot = numbering.Numbers.FirstOrDefault(known => known.Ordinal == ordinal);

        if (slot is { Fate: "never-printed" or "void" or "elsewhere" })
        {
            throw EditionRefusals.NumberNotOpen(spelled, slot.Fate, work);
        }

        if (slot is null)
        {
            NewEdition.AddNumber(numbering.Id, ordinal, "open", deed);
        }

        deed.Set("impression", sheet.Id, ("numbering", numbering.Id), ("number", ordinal));

        return new NumberGiven(sheet, spelled);
    }

    private static void MayBear(Work work, Numbering numbering, Impression sheet)
    {
        var asProof = sheet.Standing == "held-out" && numbering.Kind is { InSize: false };

        if (!sheet.IsKept && !asProof)
        {
            throw EditionRefusals.NotKept(sheet);
        }

        if (sheet.Number is not null)
        {
            throw EditionRefusals.NumberedAlready(sheet, work);
        }
    }

    private static void OfThisPrinting(Work work, Numbering numbering, Impression sheet)
    {
        if (work.Editions.FirstOrDefault(one => one.Find(numbering.Id) is not null) is { } edition && !PrintingOf.Fits(work, edition, sheet))
        {
            throw EditionRefusals.NotOfThisPrinting(sheet, edition, work);
        }
    }

    private static void NotClosed(Work work, Edition edition)
    {
        if (edition.IsClosed)
        {
            throw EditionRefusals.Closed(work);
        }
    }
}

/// <summary>One number of a numbering, chosen by name.</summary>
public sealed record NumberChosen(Numbering Numbering, int Ordinal)
{
    public string Spelled => Numbering.Spell(Ordinal) ?? Numbering.KindWord;
}
