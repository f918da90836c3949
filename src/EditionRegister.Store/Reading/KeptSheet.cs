using EditionRegister.Domain.Dates;

namespace EditionRegister.Store.Reading;

/// <summary>A sheet as it stands on the list of who has or owns it, or of the place it lies in.</summary>
/// <param name="Work">Its work.</param>
/// <param name="Title">As lists show it.</param>
/// <param name="Code">As people see it: <c>7KQ4-M2X3</c>.</param>
/// <param name="Number">As pencilled, else as given, else that it has none.</param>
/// <param name="Kind">The move or transfer that brought it there, by its word.</param>
/// <param name="Since">When that was.</param>
/// <param name="Until">Until when, for a consignment.</param>
/// <param name="Rate">The consignee's share in hundredths of a per cent.</param>
/// <param name="Place">Where it lies, or null.</param>
public sealed record KeptSheet(long Work, string Title, string Code, string Number, string Kind, RecordedDate Since, RecordedDate Until, int? Rate, long? Place);

/// <summary>The first of some sheets, in the order in which they came there, and how many there are in all.</summary>
public sealed record KeptSheets(IReadOnlyList<KeptSheet> First, long All);

/// <summary>What someone did for a work.</summary>
/// <param name="Work">The work.</param>
/// <param name="Title">As lists show it.</param>
/// <param name="Year">As written.</param>
/// <param name="Role">The role's word.</param>
public sealed record RoleHeld(long Work, string Title, string? Year, string Role);
