using System.Globalization;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.Tui.PlanChest;

/// <summary>What is asked of one print of somebody else's edition that is here.</summary>
internal static class HoldForm
{
    private const string Title = "Title";
    private const string Maker = "Maker";
    private const string Number = "Number";
    private const string Statement = "Edition in words";
    private const string Total = "All in all";
    private const string Place = "Place";
    private const string Owner = "Owner";
    private const string Year = "Year";
    private const string Technique = "Technique";
    private const string Signed = "Signed by hand";
    private const string Note = "Note";

    public static async Task<Opening?> OfAsync(Desk desk) => New(desk, await desk.Store.Do(register => register.LookAround.OwnWords()));

    private static Form New(Desk desk, OwnWords own) => new(
        "A print of somebody else's edition",
        [
            new Field(Title) { Form = "as it is called; empty where nobody knows" },
            new Field(Maker) { Form = "who made it; recorded in the address book where they are new; empty where nobody knows" },
            Fields.SheetNumber(Number, own, form: "as it stands on the sheet: 14/75, A/P II/V or épreuve d'artiste 3/10"),
            Fields.Statement(Statement, own),
            Fields.Count(Total, least: 1),
            new Field(Place) { Form = "where it lies: Drawer 3; empty where nobody knows" },
            new Field(Owner) { Form = "whose it is, of the address book; empty where nobody knows" },
            Fields.Date(Year),
            new Field(Technique) { Form = "linocut, etching" },
            Field.OneOf(Signed, ["unknown", "yes", "no"]),
            new Field(Note) { Form = "anything else" },
        ],
        form => form[Place] is { } typed
            ? Sheets.NewPlace.OfferedAsync(desk, form, typed, "put it there", place => SaveAsync(desk, form, place))
            : SaveAsync(desk, form, null))
    {
        Name = "hold",
        About = ["“All in all” counts every impression there is, with all proofs, as others state it.", "Such an edition is not ours: it is never closed here, and no certificate is issued."],
        OwnEachTime = [Title, Number, Statement, Total, Year, Note],
    };

    private static async Task<Saved> SaveAsync(Desk desk, Form form, string? place)
    {
        HeldSheet held = new()
        {
            Title = form[Title],
            Maker = form[Maker],
            Number = form[Number],
            Statement = form[Statement],
            Total = form[Total] is { } total ? int.Parse(total, CultureInfo.InvariantCulture) : null,
            Place = place,
            Owner = form[Owner],
            Year = Fields.DateOf(form[Year]),
            Technique = form[Technique],
            Signed = form[Signed]!,
            Note = form[Note],
        };
        var (code, work) = await desk.Store.Do(register =>
        {
            var made = register.HoldSheet.Run(held);

            return (made, Called.Work(register.LookAround.Impression(made).Work));
        });

        return new Saved(MovesSaid.Held(work, held.Number, held.Total, code), new ImpressionPage(desk, code));
    }
}
