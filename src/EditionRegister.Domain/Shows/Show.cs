using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Shows;

/// <summary>An exhibition, sale or fair with what is listed for it, as the register stands at one moment.</summary>
public sealed record Show
{
    public required long Id { get; init; }

    public required long V { get; init; }

    /// <summary>Null only where it was erased.</summary>
    public string? Name { get; init; }

    /// <summary>exhibition, sale, fair or other.</summary>
    public required string Kind { get; init; }

    /// <summary>Where it is held, one of the register's places.</summary>
    public long? Place { get; init; }

    /// <summary>Who holds it, one of the address book.</summary>
    public long? Host { get; init; }

    public required RecordedDate Opens { get; init; }

    public required RecordedDate Closes { get; init; }

    public string? Note { get; init; }

    /// <summary>Every sheet that was ever listed, in list order.</summary>
    public required IReadOnlyList<ShowListing> Listings { get; init; }

    public string ShownName => Name ?? "(erased)";

    /// <summary>What is listed now, in list order.</summary>
    public IEnumerable<ShowListing> Listed => Listings.Where(listing => listing.IsListed);

    public ShowListing? ListingOf(long impression) => Listings.FirstOrDefault(listing => listing.Impression == impression);
}
