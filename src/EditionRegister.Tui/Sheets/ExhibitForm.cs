using System.Globalization;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Moves;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is asked when sheets are hung: in which show, or at which other place.</summary>
internal static class ExhibitForm
{
    private const string Show = "Show";
    private const string Place = "Place";
    private const string Until = "Until";
    private const string Date = "Date";
    private const string Note = "Note";
    private const string None = "none";

    public static async Task<Opening?> OfAsync(Desk desk, SheetsAtHand sheets)
    {
        var shows = await desk.Store.Do(register => register.LookAround.Shows());
        var show = Field.OneOf(Show, [.. shows.Reverse().Select(one => $"{Counted.Figure(one.Id)} {one.ShownName}"), None]);

        return new Form(
            $"Hang {sheets.Called}",
            [
                show,
                new Field(Place)
                {
                    Form = "one of the register's places; empty is where the show is",
                    Known = typed => Fields.Matching(sheets.Known.Places, typed),
                },
                Fields.Date(Until),
                Fields.Today(Date, desk.Today),
                new Field(Note) { Form = "anything else" },
            ],
            form => form[Place] is { } typed
                ? NewPlace.OfferedAsync(desk, form, typed, $"hang {Counted.Sheets(sheets.Count)} there", place => SaveAsync(desk, sheets, form, place))
                : SaveAsync(desk, sheets, form, null))
        {
            Name = "hang",
            About = [sheets.About, "A sold sheet may hang too. Without a day the show's last one counts."],
            OwnEachTime = [Note],
        };
    }

    private static Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form, string? place) => SendForm.SendAsync(desk, sheets, new SentTo(null, place), new Going(MoveKind.Exhibited, null)
    {
        Show = form[Show] == None ? null : long.Parse(form[Show]!.Split(' ')[0], CultureInfo.InvariantCulture),
        Moved = DayOf.Deed(desk, form[Date]),
        Until = Fields.DateOf(form[Until]) ?? RecordedDate.None,
        Note = form[Note],
    });
}
