using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Domain.Works;

/// <summary>One sheet fresh from the pile, with its code for ever and the first link of both chains.</summary>
public sealed record NewSheet(long Run, int Ordinal, RegisterCode Code, string Standing)
{
    /// <summary>The id the sheet takes; null draws a fresh one. Only a code given before brings its own.</summary>
    public long? Id { get; init; }

    public MoveKind FirstMove { get; init; } = MoveKind.Pulled;

    public MoveKind FirstTransfer { get; init; } = MoveKind.Made;

    /// <summary>What the owner received when the sheet changed hands, in minor units of <see cref="Currency"/>; as a list says it.</summary>
    public long? Net { get; init; }

    /// <summary>The pass after which it was held out, or null.</summary>
    public long? AfterPass { get; init; }

    /// <summary>ISO 4217.</summary>
    public string? Currency { get; init; }

    /// <summary>As its run says: yes where it was printed after the maker's death.</summary>
    public string? Posthumous { get; init; }

    /// <summary>At the place named, else at the maker's; and the maker's own, or the estate's where the maker was dead.</summary>
    public long Record(Work work, long? place, RecordedDate since, Deed deed)
    {
        var first = work.FirstOwnerOf(Posthumous)?.Id;

        return Record(
            place is { } lies ? Position.InPlace(lies) : first is { } keeper ? Position.With(keeper) : Position.Unknown,
            first is { } owner ? Owner.Known(owner) : Owner.Unknown,
            since,
            deed);
    }

    public long Record(Position where, Owner whose, RecordedDate since, Deed deed)
    {
        var id = Id ?? deed.NewId("impression");

        if (Id is null)
        {
            deed.Set("code", deed.NewId("code"), ("code", Code.Text), ("sheet", id));
        }

        deed.Set("impression", id,
            ("run", Run), ("ordinal", Ordinal), ("code", Code.Text), ("standing", Standing), ("signed", "no"), ("for_sale", "by-custom"));

        if (AfterPass is not null)
        {
            deed.Set("impression", id, ("after_pass", AfterPass));
        }

        ChainFacts.Move(id, 1, FirstMove, from: null, where, since, deed);
        var link = ChainFacts.Pass(id, 1, FirstTransfer, from: null, whose, since, deed);
        deed.Set("ownership", link, ("net", Net), ("currency", Net is null ? null : Currency));

        return id;
    }
}
