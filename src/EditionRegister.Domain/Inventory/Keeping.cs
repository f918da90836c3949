using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Inventory;

/// <summary>Where a sheet is, who has it and whose it is, as the inventory says it.</summary>
internal static class Keeping
{
    public static string? PlaceOf(Work work, Impression impression) => impression.Where switch
    {
        { State: "placed", Place: { } place } when work.Book.Places.ContainsKey(place) => work.Book.PathOf(place),
        { State: "with" } => null,
        { State: "gone" } => InventoryRow.Gone,
        _ => InventoryRow.Unknown,
    };

    /// <summary>By public-name policy; a private buyer with a print of their own is nobody's business but the keeper's.</summary>
    public static string? HolderOf(Work work, Impression impression, bool owners)
    {
        if (impression.Where is not { State: "placed" or "with" } position)
        {
            return null;
        }

        return work.Book.Person(position.Holder) is { } holder
            ? owners || !IsPrivateOwner(work, impression, holder) ? holder.PublicText : PublicName.PrivateCollection
            : position.State == "with" ? InventoryRow.Unknown : null;
    }

    public static string OwnerOf(Work work, Impression impression) =>
        work.Book.Person(impression.Whose?.Person) is { } owner ? owner.CreditText : InventoryRow.Unknown;

    private static bool IsPrivateOwner(Work work, Impression impression, Person holder) =>
        !holder.IsOrganisation && impression.Whose?.Person == holder.Id && work.Makers.All(maker => maker.Id != holder.Id);
}
