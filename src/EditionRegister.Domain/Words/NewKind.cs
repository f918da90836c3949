using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Words;

/// <summary>A kind of numbering that a register makes for itself, as it is first said.</summary>
public sealed record NewKind
{
    /// <summary>Permanent, in kebab case: what the register, commands and CSV call it.</summary>
    public required string Word { get; init; }

    /// <summary>As pencilled before the number.</summary>
    public required string Mark { get; init; }

    /// <summary>In words, in the singular, for screens and documents.</summary>
    public required string Name { get; init; }

    /// <summary>Counts in the edition size; then it counts in the total too.</summary>
    public bool InSize { get; init; }

    /// <summary>Counts in the total of impressions.</summary>
    public bool InTotal { get; init; } = true;

    /// <summary>Sold by custom.</summary>
    public bool ForSale { get; init; }

    /// <exception cref="RefusedException">word-not-kebab, word-known-already, kind-mark-unfit, kind-mark-taken, kind-name-missing or kind-size-without-total.</exception>
    public long Record(OwnWords own, Deed deed)
    {
        ArgumentNullException.ThrowIfNull(own);
        ArgumentNullException.ThrowIfNull(deed);
        OwnWordRules.Free("kind", Word, own.Kind(Word)?.Name);
        OwnWordRules.Named(Name);
        OwnWordRules.Marked(Mark, own.AllKinds);
        OwnWordRules.Counts(InSize, InTotal);

        var id = deed.NewId("numbering_kind");
        deed.Set("numbering_kind", id,
            ("word", Word), ("mark", Mark.Trim()), ("name", Name.Trim()),
            ("in_size", OwnWordRules.YesNo(InSize)), ("in_total", OwnWordRules.YesNo(InTotal)), ("for_sale", OwnWordRules.YesNo(ForSale)));

        return id;
    }
}
