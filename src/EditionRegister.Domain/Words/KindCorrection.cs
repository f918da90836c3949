using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Words;

/// <summary>What is changed about a kind of the register's own; null leaves a fact as it is.</summary>
public sealed record KindCorrection
{
    public string? Mark { get; init; }

    public string? Name { get; init; }

    public bool? InSize { get; init; }

    public bool? InTotal { get; init; }

    public bool? ForSale { get; init; }

    /// <param name="own">The register's own words.</param>
    /// <param name="word">Which kind.</param>
    /// <param name="id">Its row.</param>
    /// <param name="numberings">How many numberings are of this kind already.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <exception cref="RefusedException">kind-not-own, kind-in-use, kind-nothing-said, or what a new kind is refused for.</exception>
    public void Record(OwnWords own, string word, long id, int numberings, Deed deed)
    {
        ArgumentNullException.ThrowIfNull(own);
        ArgumentNullException.ThrowIfNull(deed);
        var kind = own.Kinds.FirstOrDefault(one => one.Word == word) ?? throw WordRefusals.NoOwnKind(word);

        if (this == new KindCorrection())
        {
            throw WordRefusals.NothingSaid();
        }

        InUse(kind, numberings);

        if (Name is not null)
        {
            OwnWordRules.Named(Name);
        }

        if (Mark is not null)
        {
            OwnWordRules.Marked(Mark, own.AllKinds.Where(other => other.Word != word));
        }

        var (inSize, inTotal) = (InSize ?? kind.InSize, InTotal ?? kind.InTotal);
        OwnWordRules.Counts(inSize, inTotal);
        deed.Set("numbering_kind", id,
            ("mark", (Mark ?? kind.Mark).Trim()), ("name", (Name ?? kind.Name).Trim()),
            ("in_size", OwnWordRules.YesNo(inSize)), ("in_total", OwnWordRules.YesNo(inTotal)), ("for_sale", OwnWordRules.YesNo(ForSale ?? kind.ForSale)));
    }

    private void InUse(NumberingKind kind, int numberings)
    {
        if (numberings == 0)
        {
            return;
        }

        if ((InSize ?? kind.InSize) != kind.InSize || (InTotal ?? kind.InTotal) != kind.InTotal)
        {
            throw WordRefusals.KindInUse(kind.Word, "what it counts in", numberings);
        }

        if ((Mark ?? kind.Mark) != kind.Mark)
        {
            throw WordRefusals.KindInUse(kind.Word, "its mark", numberings);
        }
    }
}
