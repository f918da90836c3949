using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.Moves;

namespace EditionRegister.Tui.PlanChest;

/// <summary>A step of where a sheet was as it should stand; or one that was learned of late, put after it.</summary>
internal static class AmendMoveForm
{
    private const string Kind = "What";
    private const string With = "With";
    private const string Place = "Place";
    private const string Nowhere = "Nobody knows where";
    private const string Date = "Date";
    private const string Until = "Until";
    private const string Share = "Their share";
    private const string Agreement = "Agreement";
    private const string Note = "Note";

    private static readonly MoveKind[] Kinds = [.. MoveKind.All.Where(kind => kind.Chain == "whereabouts" && !kind.IsFirst)];

    public static async Task<Opening?> OfAsync(Desk desk, ImpressionSeen seen, WhereaboutsLink link, Amending what)
    {
        var known = await desk.Store.Do(register => register.LookAround.Suggestions());
        var was = what == Amending.PutRight ? link : null;
        var book = seen.Work.Book;

        return new Form(
            was is null ? $"After step {Counted.Figure(link.Ordinal)} of {seen.Impression.ShownCode}" : $"Step {Counted.Figure(link.Ordinal)} of {seen.Impression.ShownCode}",
            [
                .. was is { Ordinal: 1 } ? [] : (Field[])[Field.OneOf(Kind, [.. Kinds.Select(kind => kind.Name)], Kinds.FirstOrDefault(kind => kind.Word == was?.Kind)?.Name)],
                new Field(With, was?.To.Holder is { } holder ? Sheets.Known.NameOf(book, holder) : "") { Form = "who had it then", Known = typed => Fields.Matching(known.People, typed) },
                new Field(Place, was?.To.Place is { } place ? book.PathOf(place) : "") { Form = "where it lay then, one of the register's places", Known = typed => Fields.Matching(known.Places, typed) },
                Field.YesNo(Nowhere, false),
                Fields.Date(Date, was?.Moved.Text ?? ""),
                Fields.Date(Until, was?.Until.Text ?? ""),
                Fields.Share(Share, was?.Rate is { } rate ? (rate / 100m).ToString("0.##", System.Globalization.CultureInfo.InvariantCulture) : ""),
                new Field(Agreement, was?.Agreement ?? "") { Form = "the agreement under which it went" },
                new Field(Note, was?.Note ?? "") { Form = "anything else; what is recorded can be corrected, not emptied" },
            ],
            form => SaveAsync(desk, seen, link, what, form))
        {
            Name = "amend a move",
            About = ["What comes after goes on from there. The logbook keeps what the step said before."],
            OwnEachTime = [Kind, With, Place, Nowhere, Date, Until, Share, Agreement, Note],
        };
    }

    private static async Task<Saved> SaveAsync(Desk desk, ImpressionSeen seen, WhereaboutsLink link, Amending what, Form form)
    {
        var (with, place) = (form[With], form[Place]);
        SentTo? to = form.IsYes(Nowhere) ? new SentTo(null) : Changed(form, With) || Changed(form, Place) ? new SentTo(with, place) : null;
        MoveCorrection right = new()
        {
            Kind = form.Fields.Any(field => field.Label == Kind) && (what == Amending.PutAfter || Changed(form, Kind)) ? Kinds.First(kind => kind.Name == form[Kind]) : null,
            Date = Changed(form, Date) ? Fields.DateOf(form[Date]) ?? RecordedDate.None : null,
            Until = Changed(form, Until) ? Fields.DateOf(form[Until]) ?? RecordedDate.None : null,
            Rate = Changed(form, Share) ? Fields.Hundredth(form[Share]) : null,
            Agreement = Changed(form, Agreement) ? form[Agreement] : null,
            Note = Changed(form, Note) ? form[Note] : null,
        };
        await desk.Store.Do(register => register.AmendChain.Move(seen.Impression.ShownCode, new AmendedStep(link.Ordinal, what), to, right, link.V));

        return new Saved(MovesSaid.Amended(seen.Impression.ShownCode, link.Ordinal, what, "whereabouts"));
    }

    private static bool Changed(Form form, string label) => form.FieldOf(label) is { } field && field.Text.Trim() != field.AsGiven.Trim();
}
