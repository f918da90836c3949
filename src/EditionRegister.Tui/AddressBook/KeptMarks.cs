using EditionRegister.Tui.Documents;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.AddressBook;

/// <summary>What can be done to the sheets of a list: mark them, and do one thing to the marked ones or to the one the cursor is on.</summary>
/// <param name="desk">The desk.</param>
/// <param name="rows">The rows as they stand now.</param>
/// <param name="here">The row the cursor is on; null where there is none.</param>
/// <param name="whose">How all of them are called: “with Quay Gallery”.</param>
internal sealed class KeptMarks(Desk desk, Func<IReadOnlyList<KeptRow>> rows, Func<KeptRow?> here, Func<string> whose)
{
    public string Said => Marked is { Count: > 0 } marked ? $"{Counted.Figure(marked.Count)} marked here" : "";

    /// <param name="moveOn">Puts the cursor on the next row, once one is marked.</param>
    /// <param name="first">The key of the deed on sheets that is most wanted here.</param>
    /// <param name="own">The deeds of the page itself.</param>
    public IEnumerable<KeyDeed> Keys(Action moveOn, string first, IReadOnlyList<KeyDeed> own)
    {
        // Editing is about whoever or whatever the page is of, and documents about all of the list where nothing is marked.
        List<KeyDeed> deeds = [.. SheetDeeds.Keys(desk, Chosen).Where(deed => deed.Key is not ("e" or "d"))];

        return [.. Mark(moveOn), .. deeds.Where(deed => deed.Key == first), .. Papers(), .. own, .. deeds.Where(deed => deed.Key != first)];
    }

    private IEnumerable<KeyDeed> Mark(Action moveOn)
    {
        if (here()?.Code is { } code)
        {
            yield return KeyDeed.Doing("Space", desk.Marked.Holds(code) ? "unmark" : "mark", () => Turn(code, moveOn)) with
            {
                Explained = "Marks the sheet for what is done next, or takes the mark away. What you do then is done to all marked sheets of this list.",
            };
        }
    }

    private IEnumerable<KeyDeed> Papers()
    {
        if (Codes.Count > 0)
        {
            yield return KeyDeed.Opens("d", "documents", OpenPapers) with { Explained = "Certificates, labels and lists of the marked sheets; of all of this list where none is marked." };
        }
    }

    private List<string> Codes => [.. rows().Select(row => row.Code).OfType<string>().Distinct(StringComparer.Ordinal)];

    private List<string> Marked => [.. Codes.Where(desk.Marked.Holds)];

    private void Turn(string code, Action moveOn)
    {
        desk.Marked.Turn(code);
        moveOn();
    }

    private ChosenSheets? Chosen() => (Marked is { Count: > 0 } marked ? marked : here()?.Code is { } code ? [code] : []) is { Count: > 0 } codes ? Called(codes) : null;

    private Opening OpenPapers()
    {
        var chosen = Marked is { Count: > 0 } marked ? Called(marked) : new ChosenSheets(OfCodes(Codes), $"{Counted.Sheets(Codes.Count)} {whose()}");

        return PaperForms.Of(desk, chosen.Choice, chosen.Called);
    }

    private ChosenSheets Called(List<string> codes) => new(
        OfCodes(codes),
        codes is [var one] && rows().First(row => row.Code == one) is var row ? $"“{row.Title}” {row.Number}" : $"{Counted.Sheets(codes.Count)} {whose()}");

    private static ImpressionChoice OfCodes(List<string> codes) => new() { Sheets = string.Join(", ", codes) };
}
