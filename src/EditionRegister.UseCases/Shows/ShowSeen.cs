using EditionRegister.Domain.People;
using EditionRegister.Domain.Shows;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Shows;

/// <summary>A show with what is listed for it, in list order, and the address book that names its place and host.</summary>
public sealed record ShowSeen(Show Show, IReadOnlyList<ImpressionListed> Listed, AddressBook Book);
