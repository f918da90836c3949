using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>A part of an old edition of ours of which something is known: a stretch of one numbering, and how many that numbering has.</summary>
public sealed record KnownPart
{
    private KnownPart(NumberingKind kind, Notation notation, IReadOnlyList<int> ordinals) => (Kind, Notation, Ordinals) = (kind, notation, ordinals);

    public NumberingKind Kind { get; }

    public Notation Notation { get; }

    /// <summary>The numbers meant, in the order named.</summary>
    public IReadOnlyList<int> Ordinals { get; }

    /// <summary>How many numbers the numbering has; null where nobody said now.</summary>
    public int? Size { get; init; }

    /// <summary>Nobody knows how many there are.</summary>
    public bool IsSizeUnknown { get; init; }

    /// <summary>at-least, at-most or about: nobody is sure how many there are, and <see cref="HedgedSize"/> is as near as it is known.</summary>
    public string? Hedge { get; init; }

    public int? HedgedSize { get; init; }

    /// <summary>The edition in somebody's words; null where none are kept.</summary>
    public string? Statement { get; init; }

    /// <summary>Numberings of proofs that those words state beside the edition.</summary>
    public IReadOnlyList<NumberingPlan> Beside { get; init; } = [];

    /// <summary>With the size as somebody says it: 30, at least 30, unknown.</summary>
    public KnownPart OfSize(StatedEdition? stated) => stated is null ? this : this with
    {
        Size = stated.Size,
        IsSizeUnknown = stated.Size is null,
        Hedge = stated.Hedge,
        HedgedSize = stated.HedgedSize,
    };

    /// <summary>With the edition in somebody's words: they say the size of the edition itself where nothing else does, and what is stated beside it.</summary>
    public KnownPart Stating(string? words, OwnWords own)
    {
        if (words is null)
        {
            return this;
        }

        var stated = StatedEdition.Read(words, own);
        var saysSize = Kind == NumberingKind.Numbered && Size is null && !IsSizeUnknown && (stated.Size is not null || stated.Hedge is not null);

        return (saysSize ? OfSize(stated) : this) with { Statement = words, Beside = stated.Beside };
    }

    /// <exception cref="RefusedException">numbers-of-one-numbering, number-named-twice, or what <see cref="NumberRanges"/> refuses.</exception>
    public static KnownPart Read(string numbers)
    {
        var ranges = NumberRanges.Read(numbers);

        if (ranges.Any(range => range.Code is not null) || ranges.Select(range => (range.Kind, range.Notation)).Distinct().Count() != 1)
        {
            throw KnownRefusals.OneNumbering(numbers);
        }

        var ordinals = ranges.SelectMany(range => Enumerable.Range(range.From ?? 1, (range.To ?? range.From ?? 1) - (range.From ?? 1) + 1)).ToList();

        return ordinals.Distinct().Count() != ordinals.Count
            ? throw KnownRefusals.Twice(numbers)
            : new KnownPart(ranges[0].Kind ?? NumberingKind.Numbered, ranges[0].Notation ?? Notation.None, ordinals);
    }

    /// <summary>The numbering these numbers belong to, its edition and its rows made where they are not there yet; each number meant is free.</summary>
    /// <param name="work">The work.</param>
    /// <param name="fate">What becomes of the numbers: elsewhere, or open where a sheet will have it.</param>
    /// <param name="note">Said of their fate.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <exception cref="RefusedException">One of <see cref="KnownRefusals"/> or <see cref="EditionRefusals"/>.</exception>
    public long Numbering(Work work, string fate, string? note, Deed deed)
    {
        var edition = EditionOf(work);
        var there = edition?.Numberings.FirstOrDefault(numbering => numbering.Kind == Kind && numbering.Notation == Notation);
        var size = SizeOf(work, there);

        if (Ordinals.FirstOrDefault(ordinal => ordinal > size) is > 0 and var beyond)
        {
            throw KnownRefusals.Beyond(Spell(beyond, size), size!.Value);
        }

        if (there is not null)
        {
            Free(work, there);
        }

        var editionId = edition?.Id ?? NewEdition.AsFound(work.Id, 1, "limited", "partly-known", deed);
        deed.SetStatement(editionId, Statement);
        var id = there?.Id ?? MakeNumbering(editionId, edition, size, deed);
        SetBeside(editionId, edition, there is null ? 1 : 0, deed);

        if (there is { Size: null } && Hedge is not null)
        {
            deed.Set("numbering", id, ("hedge", Hedge), ("hedged_size", HedgedSize));
        }


        foreach (var ordinal in Ordinals.Concat(there is null && size is { } all ? Enumerable.Range(1, all).Except(Ordinals) : []))
        {
            var slot = there?.Numbers.FirstOrDefault(known => known.Ordinal == ordinal)?.Id ?? deed.NewId("number");
            var isMeant = Ordinals.Contains(ordinal);
            deed.Set("number", slot, ("numbering", id), ("ordinal", ordinal), ("fate", isMeant ? fate : "unknown"), ("note", isMeant ? note : null));
        }

        return id;
    }

    private static Edition? EditionOf(Work work) => work.Editions switch
    {
        [] => null,
        _ => work.Editions.FirstOrDefault(edition => edition.Extent == "partly-known") ?? throw KnownRefusals.NotAnOldEdition(work),
    };

    private int? SizeOf(Work work, Numbering? there)
    {
        if (there is null)
        {
            return Size is null && !IsSizeUnknown ? throw KnownRefusals.SizeNotSaid(work) : Size;
        }

        return Size is { } said && there.Size != said ? throw KnownRefusals.SizeOtherwise(work, there.Size, said) : there.Size;
    }

    private void Free(Work work, Numbering numbering)
    {
        foreach (var ordinal in Ordinals)
        {
            Free(work, numbering, ordinal, numbering.Spell(ordinal) ?? numbering.KindWord);
        }
    }

    private static void Free(Work work, Numbering numbering, int ordinal, string spelled)
    {
        if (work.Impressions.FirstOrDefault(sheet => sheet.Numbering == numbering.Id && sheet.Number == ordinal) is { } holder)
        {
            throw EditionRefusals.NumberGiven(spelled, holder, work);
        }

        if (numbering.Numbers.FirstOrDefault(slot => slot.Ordinal == ordinal) is { Fate: not ("unknown" or "open") } slot)
        {
            throw EditionRefusals.NumberNotOpen(spelled, slot.Fate, work);
        }
    }

    // Of a kind that is recorded already more is known than its count.
    private void SetBeside(long id, Edition? edition, int made, Deed deed)
    {
        var ordinal = (edition?.Numberings.Max(numbering => numbering.Ordinal) ?? 0) + made;

        foreach (var plan in Beside.Where(plan => plan.Kind != Kind && edition?.Numberings.Any(numbering => numbering.Kind == plan.Kind) != true))
        {
            NewEdition.AddNumbering(id, ++ordinal, plan, "partly-known", deed);
        }
    }

    // Rows of its numbers come from the caller, each with the fate it has.
    private long MakeNumbering(long edition, Edition? there, int? size, Deed deed) => NewEdition.AddNumbering(
        edition, (there?.Numberings.Max(numbering => numbering.Ordinal) ?? 0) + 1, new NumberingPlan(Kind, Notation, size, size is null ? "unknown" : "stated") { Hedge = Hedge, HedgedSize = HedgedSize }, "someone-elses", deed);

    private string Spell(int ordinal, int? size) => size is { } of ? $"{Kind.Mark} {Notation.Write(ordinal)}/{Notation.Write(of)}".Trim() : Notation.Write(ordinal);
}
