using EditionRegister.Domain.Text;
using EditionRegister.Tui.Asking;

namespace EditionRegister.Tui.Sheets;

/// <summary>Fields for people and places the register knows.</summary>
internal static class Known
{
    public static Field Place(string label, SheetsAtHand sheets, bool isNeeded, string given = "") => new(label, given)
    {
        IsNeeded = isNeeded,
        Form = isNeeded ? "Drawer 3, or from the outside in: Studio › Plan chest › Drawer 3" : "Drawer 3; empty where the maker has them in hand",
        Known = typed => Fields.Matching(sheets.Known.Places, typed),
    };

    public static Field Person(string label, SheetsAtHand sheets, string form, bool isNeeded = false, string given = "") => new(label, given)
    {
        IsNeeded = isNeeded,
        Form = form,
        Known = typed => Fields.Matching(sheets.Known.People, typed),
    };

    /// <summary>A name that means this person only; the number where another is called the same.</summary>
    public static string NameOf(Domain.People.AddressBook book, long person)
    {
        var name = book.NameOf(person);
        var folded = SearchText.Fold(name);

        return book.People.Values.Count(other => SearchText.Fold(other.FullName) == folded) == 1 ? name : Counted.Figure(person);
    }
}
