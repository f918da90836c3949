using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is asked when sheets go somewhere for a time: who has them, where, until when and on what terms.</summary>
internal static class SendForm
{
    private const string Standing = "They are";
    private const string Place = "Place";
    private const string Until = "Until";
    private const string Share = "Their share";
    private const string Agreement = "Agreement";
    private const string Insured = "Insured for";
    private const string Currency = "Currency";
    private const string Date = "Date";
    private const string Note = "Note";

    public static Form Of(Desk desk, SheetsAtHand sheets, MoveKind kind)
    {
        var isNeeded = kind == MoveKind.Lent || kind == MoveKind.OnApproval || kind == MoveKind.SubConsigned;
        var who = Known.Person(Who(kind), sheets, isNeeded ? "a name of the address book" : "a name of the address book; empty where nobody is named", isNeeded);
        var isNew = Newcomer.Field(Standing, who, mayBeUnknown: false);
        var currency = MoneyFields.Currency(Currency, sheets.Settings.Currency);

        return new Form(
            $"{sheets.Called}: {kind.Name}",
            [
                who,
                isNew,
                new Field(Place) { Form = "where they lie then, one of the register's places; may stay empty", Known = typed => Fields.Matching(sheets.Known.Places, typed) },
                Fields.Date(Until),
                .. kind == MoveKind.SubConsigned ? [Fields.Share(Share)] : (Field[])[],
                .. kind == MoveKind.AwaitingCollection ? [] : (Field[])[new Field(Agreement) { Form = "the agreement under which they go, as it is called or numbered" }],
                .. kind == MoveKind.Lent ? [MoneyFields.Amount(Insured, currency, "what each is insured for"), currency] : (Field[])[],
                Fields.Today(Date, desk.Today),
                new Field(Note) { Form = "anything else" },
            ],
            form => who.Answer is null ? PlacedAsync(desk, sheets, form, kind) : Newcomer.ThenAsync(desk, form, who, isNew, () => PlacedAsync(desk, sheets, form, kind)))
        {
            Name = kind.Word,
            About = [sheets.About],
            OwnEachTime = [Note, Standing],
            Caution = kind == MoveKind.Lent || kind == MoveKind.SubConsigned
                ? "Who answers for loss and damage is decided by the agreement, the insurance and local law; ask licensed advice where in doubt."
                : null,
        };
    }

    /// <summary>Whether the form has the field.</summary>
    internal static string? Answer(Form form, string label) => form.Fields.FirstOrDefault(field => field.Label == label)?.Answer;

    /// <summary>Sends them, and says so with its undoing.</summary>
    internal static async Task<Saved> SendAsync(Desk desk, SheetsAtHand sheets, SentTo to, Going terms)
    {
        var (count, name, path, show, meant) = await desk.Store.Do(register =>
        {
            var done = register.SendAway.Run(sheets.ByCode, to, terms);
            var book = register.LookAround.Book();

            return (done,
                to.With is { } who ? Names.Of(register, who) : null,
                to.Place is { } place ? book.PathOf(Places.Find(book, place)) : null,
                terms.Show is { } id ? register.LookAround.Show(id).Show : null,
                LastStep.Of(register, sheets));
        });
        var said = terms with { Until = terms.Until.IsKnown ? terms.Until : show?.Closes ?? RecordedDate.None };

        return new Saved(MovesSaid.Sent(count, said, show?.ShownName ?? MovesSaid.Destination(name, path), terms.Moved)) { Undo = LastStep.Undoing(desk, "that step", sheets, meant, move: true, transfer: false) };
    }

    private static Task<Saved> PlacedAsync(Desk desk, SheetsAtHand sheets, Form form, MoveKind kind) => form[Place] is { } typed
        ? NewPlace.OfferedAsync(desk, form, typed, $"put {Counted.Sheets(sheets.Count)} there", place => SaveAsync(desk, sheets, form, kind, place))
        : SaveAsync(desk, sheets, form, kind, null);

    private static Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form, MoveKind kind, string? place)
    {
        var currency = form.Fields.FirstOrDefault(field => field.Label == Currency);

        return SendAsync(desk, sheets, new SentTo(form[Who(kind)], place), new Going(kind, null)
        {
            Moved = DayOf.Deed(desk, form[Date]),
            Until = Fields.DateOf(form[Until]) ?? RecordedDate.None,
            Rate = Fields.Hundredth(Answer(form, Share)),
            Agreement = Answer(form, Agreement),
            Value = currency is null ? null : MoneyFields.MinorUnits(form[Insured], currency),
            ValueCurrency = currency is null ? null : MoneyFields.Of(currency),
            Note = form[Note],
        });
    }

    private static string Who(MoveKind kind) => kind.Word switch
    {
        "in-transit" => "Carrier",
        "at-framer" => "Framer",
        "at-photographer" => "Photographer",
        "at-conservator" => "Conservator",
        "awaiting-collection" => "Kept by",
        _ => "To whom",
    };
}
