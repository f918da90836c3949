using EditionRegister.Domain.People;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Looking;

/// <summary>Someone as a list of the address book shows them: how many sheets they have and own by now, and how many works they had a part in.</summary>
public sealed record PersonListed(Person Person, long Has, long Owns, long Works);

/// <summary>Someone whole: what they did for which works, what they own and what they have.</summary>
public sealed record PersonSeen(Person Person, IReadOnlyList<RoleHeld> Roles, KeptSheets Owns, KeptSheets Has);

/// <summary>A place as a list of the address book shows it.</summary>
/// <param name="Id">The place.</param>
/// <param name="Path">From the outermost place to this one.</param>
/// <param name="Keeper">Who keeps it, or null.</param>
/// <param name="KeeperName">Their name, or null.</param>
/// <param name="Sheets">How many sheets lie in it by now, not counting places inside it.</param>
/// <param name="Within">How many lie in it and in all places inside it.</param>
public sealed record PlaceListed(long Id, string Path, long? Keeper, string? KeeperName, long Sheets, long Within);

/// <summary>A place whole: the places inside it however deep, and what lies in any of them.</summary>
public sealed record PlaceSeen(Place Place, PlaceListed Listed, IReadOnlyList<PlaceListed> Inside, KeptSheets Sheets)
{
    /// <summary>Blocks and plates that lie there, and in which place.</summary>
    public IReadOnlyList<(long Place, LyingThing Thing)> Matrices { get; init; } = [];
}
