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

    /// <summary>The place, person or owner a step ends with.</summary>
    public static string Words(object? end, AddressBook book) => end switch
    {
        null => "nowhere",
        Position position => WhereInWords.Named(position, book),
        Owner owner => WhereInWords.Named(owner, book),
        _ => end.ToString()!,
    };
}
