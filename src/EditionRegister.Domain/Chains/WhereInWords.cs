using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>Says where a sheet is and whose it is, for the keeper of the register; what damage left out is said too.</summary>
public static class WhereInWords
{
    /// <summary>Where a sheet is now: in Drawer 3, with Quay Gallery, in transit, lost.</summary>
    public static string Of(Work work, Impression sheet) => sheet.Whereabouts.Count == 0 ? Of(work, sheet.Where) : Of(work, sheet.Whereabouts[^1]);

    /// <summary>Where one step took it.</summary>
    public static string Of(Work work, WhereaboutsLink link) => link.Kind switch
    {
        "lost" or "stolen" when link.To.State == "unknown" => link.Kind,
        "destroyed" when link.To.State == "gone" => "destroyed",
        "in-transit" => link.To.State == "unknown" ? "in transit" : "in transit, " + Of(work, link.To),
        "awaiting-collection" => Of(work, link.To) + ", awaiting collection",
        _ => Of(work, link.To),
    };

    /// <summary>To be read after “it is”.</summary>
    public static string Of(Work work, Position? where) => where switch
    {
        { State: "placed" } => "in " + Named(where, work.Book),
        { State: "with" } => "with " + Named(where, work.Book),
        { State: "gone" } => "gone for good",
        _ => "nobody knows where",
    };

    /// <summary>The place or person itself: Drawer 3, Quay Gallery.</summary>
    public static string Named(Position? where, AddressBook book) => where switch
    {
        null => "nowhere",
        { State: "placed" } => PlaceNamed(where.Place, book) + (where.Holder is { } holder ? $", with {PersonNamed(holder, book)}" : ""),
        { State: "with" } => PersonNamed(where.Holder, book),
        { State: "unknown" } => "a place not known",
        { State: "gone" } => "gone for good",
        _ => where.State,
    };

    public static string OwnerOf(Work work, Impression sheet) => OwnerOf(work, sheet.Whose);

    public static string OwnerOf(Work work, Owner? owner) => owner is null ? "an owner not known" : Named(owner, work.Book);

    public static string Named(Owner owner, AddressBook book) => owner.State switch
    {
        "known" => PersonNamed(owner.Person, book),
        "unknown" => "an owner not known",
        _ => owner.State,
    };

    /// <summary>The whole name; the number where the register has no such person.</summary>
    public static string PersonNamed(long? id, AddressBook book) => book.Person(id)?.FullName ?? $"person {Number(id)}";

    private static string PlaceNamed(long? id, AddressBook book) =>
        id is { } place && book.Places.ContainsKey(place) ? book.PathOf(id) : $"place {Number(id)}";

    private static string Number(long? id) => id is { } n ? FormattableString.Invariant($"{n}") : "(none)";
}
