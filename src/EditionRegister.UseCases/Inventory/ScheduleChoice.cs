using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Inventory;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Inventory;

/// <summary>Which sheets a schedule lists; null asks for no restriction, and several narrow each other.</summary>
/// <param name="Place">A place, with all places inside it.</param>
/// <param name="With">Who has them.</param>
/// <param name="Owner">Whose they are.</param>
public sealed record ScheduleChoice(string? Place = null, string? With = null, string? Owner = null);

/// <summary>The same, found in the address book; what is found stays the same person or place under any name.</summary>
internal sealed record ScheduleWanted(long? Place, long? With, long? Owner)
{
    /// <exception cref="Domain.RefusedException">person-not-found, person-ambiguous, place-not-found, place-ambiguous.</exception>
    public static ScheduleWanted Find(AddressBook book, ScheduleChoice choice) => new(
        choice.Place is { } place ? Places.Find(book, place) : null,
        choice.With is { } with ? Persons.Find(book, with) : null,
        choice.Owner is { } owner ? Persons.Find(book, owner) : null);

    /// <param name="works">The works as they stood.</param>
    /// <param name="book">The places as they lay in each other then.</param>
    public InsuranceSchedule Of(IEnumerable<Work> works, AddressBook book)
    {
        var within = Place is { } outer ? Places.Within(book, outer) : null;

        return InsuranceSchedule.Of(works.SelectMany(work => work.Impressions.Where(sheet => Fits(sheet, within)).Select(sheet => new InventorySheet(work, sheet))));
    }

    private bool Fits(Impression sheet, IReadOnlySet<long>? within) =>
        (within is null || (sheet.Where?.Place is { } place && within.Contains(place)))
        && (With is null || sheet.Where?.Holder == With)
        && (Owner is null || sheet.Whose?.Person == Owner);
}
