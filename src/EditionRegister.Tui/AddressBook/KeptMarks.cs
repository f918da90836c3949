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

    public IEnumerable<KeyDeed> Keys(Action moveOn)
    {
        if (here()?.Code is { } code)
        {
            yield return KeyDeed.Doing("Space", desk.Marked.Holds(code) ? "unmark" : "mark", () => Turn(code, moveOn)) with
            {
                Explained = "Marks the sheet for what is done next, or takes the mark away. What you do then is done to all marked sheets of this list.",
            };
        }

        if (Chosen() is not null)
        {
            foreach (var deed in SheetDeeds.Keys(desk, Chosen))
            {
                yield return deed;
            }
        }

        if (Codes.Count > 0)
        {
            yield return KeyDeed.Opens("d", "documents", Papers) with { Explained = "Certificates, labels and lists of the marked sheets; of all of this list where none is marked." };
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

    private Opening Papers()
    {
        var chosen = Marked is { Count: > 0 } marked ? Called(marked) : new ChosenSheets(OfCodes(Codes), $"{Counted.Sheets(Codes.Count)} {whose()}");

        return PaperForms.Of(desk, chosen.Choice, chosen.Called);
    }

    private ChosenSheets Called(List<string> codes) => new(
        OfCodes(codes),
        codes is [var one] && rows().First(row => row.Code == one) is var row ? $"{row.Title} {row.Number}" : $"{Counted.Sheets(codes.Count)} {whose()}");

    private static ImpressionChoice OfCodes(List<string> codes) => new() { Sheets = string.Join(", ", codes) };
}
