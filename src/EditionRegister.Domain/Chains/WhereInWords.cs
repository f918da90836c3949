using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>Says where a sheet is and whose it is, for the keeper of the register.</summary>
public static class WhereInWords
{
    public static string Of(Work work, Impression sheet) => Of(work, sheet.Where);

    public static string Of(Work work, Position? where) => where switch
    {
        { State: "placed" } => "in " + work.Book.PathOf(where.Place),
        { State: "with" } => "with " + work.Book.NameOf(where.Holder),
        { State: "gone" } => "gone for good",
        _ => "nobody knows where",
    };

    public static string OwnerOf(Work work, Impression sheet) => OwnerOf(work, sheet.Whose);

    public static string OwnerOf(Work work, Owner? owner) => owner is { State: "known" } ? work.Book.NameOf(owner.Person) : "an owner not known";
}
