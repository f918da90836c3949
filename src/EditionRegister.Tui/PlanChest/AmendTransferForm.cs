using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.Moves;

namespace EditionRegister.Tui.PlanChest;

/// <summary>A step of whose a sheet was as it should stand; or one that was learned of late, put after it.</summary>
internal static class AmendTransferForm
{
    private const string Kind = "What";
    private const string To = "To whom";
    private const string Nobody = "Nobody knows whose";
    private const string Date = "Date";
    private const string Price = "Price";
    private const string Net = "Net";
    private const string Currency = "Currency";
    private const string Agent = "Sold through";
    private const string Note = "Note";

    private static readonly MoveKind[] Kinds = [.. MoveKind.All.Where(kind => kind.Chain == "ownership" && !kind.IsFirst)];

    public static async Task<Opening?> OfAsync(Desk desk, ImpressionSeen seen, OwnershipLink link, Amending what)
    {
        var (known, usual) = await desk.Store.Do(register => (register.LookAround.Suggestions(), register.Settings.Currency));
        var was = what == Amending.PutRight ? link : null;
        var book = seen.Work.Book;
        var currency = MoneyFields.Currency(Currency, was?.Currency ?? usual);

        return new Form(
            was is null ? $"After step {Counted.Figure(link.Ordinal)} of {seen.Impression.ShownCode}" : $"Step {Counted.Figure(link.Ordinal)} of {seen.Impression.ShownCode}",
            [
                .. was is { Ordinal: 1 } ? [] : (Field[])[Field.OneOf(Kind, [.. Kinds.Select(kind => kind.Name)], Kinds.FirstOrDefault(kind => kind.Word == was?.Kind)?.Name)],
                Person(To, was?.To.Person, "whose it was then"),
                Field.YesNo(Nobody, false),
                Fields.Date(Date, was?.Passed.Text ?? ""),
                MoneyFields.Amount(Price, currency, "what the buyer paid", PricesShown.Amount(was?.Price, was?.Currency) ?? ""),
                MoneyFields.Amount(Net, currency, "what the owner received", PricesShown.Amount(was?.Net, was?.Currency) ?? ""),
                currency,
                Person(Agent, was?.Agent, "who sold for the owner"),
                new Field(Note, was?.Note ?? "") { Form = "anything else; what is recorded can be corrected, not emptied" },
            ],
            form => SaveAsync(desk, seen, link, what, form))
        {
            Name = "amend a transfer",
            About = ["What comes after goes on from there. The logbook keeps what the step said before."],
            OwnEachTime = [Kind, To, Nobody, Date, Price, Net, Agent, Note],
            Caution = "A provenance that was handed out in writing stays as it was handed out; tell whoever has it what was put right.",
        };

        Field Person(string label, long? given, string form) =>
            new(label, given is { } id ? Sheets.Known.NameOf(book, id) : "") { Form = form, Known = typed => Fields.Matching(known.People, typed) };
    }

    private static async Task<Saved> SaveAsync(Desk desk, ImpressionSeen seen, OwnershipLink link, Amending what, Form form)
    {
        var currency = form.FieldOf(Currency);
        AmendedPeople people = new(Changed(form, To) ? form[To] : null, form.IsYes(Nobody), Changed(form, Agent) ? form[Agent] : null);
        TransferCorrection right = new()
        {
            Kind = form.Fields.Any(field => field.Label == Kind) && (what == Amending.PutAfter || Changed(form, Kind)) ? Kinds.First(kind => kind.Name == form[Kind]) : null,
            Date = Changed(form, Date) ? Fields.DateOf(form[Date]) ?? RecordedDate.None : null,
            Price = Changed(form, Price) || Changed(form, Currency) ? MoneyFields.MinorUnits(form[Price], currency) : null,
            Net = Changed(form, Net) || Changed(form, Currency) ? MoneyFields.MinorUnits(form[Net], currency) : null,
            Currency = MoneyFields.Of(currency),
            Note = Changed(form, Note) ? form[Note] : null,
        };
        await desk.Store.Do(register => register.AmendChain.Transfer(seen.Impression.ShownCode, new AmendedStep(link.Ordinal, what), people, right, link.V));

        return new Saved(MovesSaid.Amended(seen.Impression.ShownCode, link.Ordinal, what, "ownership"));
    }

    private static bool Changed(Form form, string label) => form.FieldOf(label) is { } field && field.Text.Trim() != field.AsGiven.Trim();
}
