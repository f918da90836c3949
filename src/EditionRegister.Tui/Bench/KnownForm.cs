using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.Tui.Bench;

/// <summary>What is asked of a stretch of an old edition: which numbers, of how many, and what is known of them.</summary>
internal static class KnownForm
{
    private const string Numbers = "Numbers";
    private const string Size = "Of how many";
    private const string Statement = "Edition in words";
    private const string What = "They are";
    private const string Place = "Place";
    private const string With = "With";
    private const string Owner = "Owner";
    private const string Signed = "Signed by hand";
    private const string Note = "Note";
    private const string Sold = "sold, buyers unknown";
    private const string Here = "here, or with someone";

    public static async Task<Opening?> OfAsync(Desk desk, Work work)
    {
        var known = await desk.Store.Do(register => register.LookAround.Suggestions());

        return new Form(
            $"An old edition of {Called.Work(work)}",
            [
                new Field(Numbers) { IsNeeded = true, Form = "of one numbering: 1-14, 17 or A/P I-III", Wrong = typed => Fields.Refused(() => KnownPart.Read(typed)) },
                new Field(Size)
                {
                    Form = work.Editions.Count == 0 ? "how many numbers there are: 30, at least 30, or unknown" : "how many there are: 30, at least 30, or unknown; empty where it was said",
                    Wrong = typed => typed == "unknown" || StatedEdition.Read(typed, work.OwnWords) is { WhyNot: null } and ({ Size: not null } or { Hedge: not null }) ? null : $"“{typed}” is no size: write how many numbers there are, at least so many, or unknown.",
                    Reads = typed => InscriptionSaid.OfEdition(typed, work.OwnWords),
                },
                Fields.Statement(Statement, work.OwnWords),
                Field.OneOf(What, [Sold, Here]),
                new Field(Place) { Form = "where they lie; empty where nobody knows, or somebody has them", Known = typed => Fields.Matching(known.Places, typed) },
                new Field(With) { Form = "who has them; may stay empty", Known = typed => Fields.Matching(known.People, typed) },
                new Field(Owner) { Form = "whose they are; empty is the maker", Known = typed => Fields.Matching(known.People, typed) },
                Field.OneOf(Signed, ["unknown", "yes", "no"]),
                new Field(Note) { Form = "anything else" },
            ],
            form => form[What] == Here && form[Place] is { } typed
                ? Sheets.NewPlace.OfferedAsync(desk, form, typed, "put them there", place => SaveAsync(desk, work, form, place))
                : SaveAsync(desk, work, form, null))
        {
            Name = "known",
            About = ["One stretch of numbers at a time; come back for the next. Place, owner and", "signature are said of sheets that are here."],
            OwnEachTime = [Numbers, Size, Statement, Note],
        };
    }

    private static async Task<Saved> SaveAsync(Desk desk, Work work, Form form, string? place)
    {
        var part = KnownPart.Read(form[Numbers]!).OfSize(form[Size] is { } size ? StatedEdition.Read(size, work.OwnWords) : null).Stating(form[Statement], work.OwnWords);

        if (form[What] == Sold)
        {
            var note = form[Note];
            var gone = await desk.Store.Do(register => register.KnownNumbers.Sold(work.Id, part, note));

            return new Saved(MovesSaid.KnownSold(gone, Called.Work(work)));
        }

        SentTo where = new(form[With], place);
        KnownSheets sheets = new() { Owner = form[Owner], Signed = form[Signed]!, Note = form[Note] };
        var (count, shown) = await desk.Store.Do(register =>
        {
            var codes = register.KnownNumbers.Here(work.Id, part, where, sheets);
            var book = register.LookAround.Book();

            return (codes.Count, MovesSaid.Destination(where.With is { } who ? Names.Of(register, who) : null, place is null ? null : book.PathOf(Places.Find(book, place))));
        });

        return new Saved(MovesSaid.KnownHere(count, Called.Work(work), shown));
    }
}
