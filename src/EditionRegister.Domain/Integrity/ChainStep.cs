using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.People;

namespace EditionRegister.Domain.Integrity;

/// <summary>One link of either chain, as far as both are alike: from a position or an owner, to another, when.</summary>
internal sealed record ChainStep(int Ordinal, string Kind, object? From, object To, RecordedDate Date)
{
    /// <summary>What happened, as people say it.</summary>
    public string What => MoveKind.Of(Kind)?.Name ?? Kind;

    public static List<ChainStep> Of(IEnumerable<WhereaboutsLink> links) =>
        [.. links.Select(link => new ChainStep(link.Ordinal, link.Kind, link.From, link.To, link.Moved))];

    public static List<ChainStep> Of(IEnumerable<OwnershipLink> links) =>
        [.. links.Select(link => new ChainStep(link.Ordinal, link.Kind, link.From, link.To, link.Passed))];

    public static string Words(object? end, AddressBook book) => end switch
    {
        null => "nowhere",
        Position { State: "placed" } position => Place(position.Place, book) + (position.Holder is { } holder ? $", with {Person(holder, book)}" : ""),
        Position { State: "with" } position => Person(position.Holder, book),
        Position { State: "unknown" } => "a place not known",
        Position { State: "gone" } => "gone for good",
        Position position => position.State,
        Owner { State: "known" } owner => Person(owner.Person, book),
        Owner { State: "unknown" } => "an owner not known",
        Owner owner => owner.State,
        _ => end.ToString()!,
    };

    public static string Person(long? id, AddressBook book) => book.Person(id)?.FullName ?? $"person {Id(id)}";

    public static string Place(long? id, AddressBook book) =>
        id is { } place && book.Places.ContainsKey(place) ? book.PathOf(id) : $"place {Id(id)}";

    private static string Id(long? id) => id is { } n ? InWords.Figure(n) : "(none)";
}
