using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Text;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>Records one impression of somebody else's edition that is here: the work, its maker where they are new, what is known of the edition, and the sheet.</summary>
public sealed class HoldSheet(RegisterStore store)
{
    /// <summary>Answers the sheet's code.</summary>
    /// <exception cref="Domain.RefusedException">One of <see cref="KnownRefusals"/>, or a number of that edition that is here already.</exception>
    public string Run(HeldSheet held) => store.Write("hold", writing =>
    {
        var book = writing.Read.Book;
        var known = KnownWork(writing.Read, held);
        var row = RowOf(held, writing.Read.OwnWords) with
        {
            Maker = known?.Makers.FirstOrDefault()?.FullName ?? held.Maker,
            Place = held.Place is { } place ? book.PathOf(Places.Find(book, place)) : null,
            With = Named(held.With),
            Owner = Named(held.Owner),
        };
        ListedWork listed = new([row], known);
        Free(listed);
        var draw = Works.CodeDrawing.From(writing);
        var code = draw();
        new BatchWriter(writing, batch: 0).Write(new ListedWork([row with { Code = code }], known));

        return code.ToString();

        string? Named(string? who) => who is null ? null : book.NameOf(Persons.Find(book, who));
    });

    private static ReadRow RowOf(HeldSheet held, OwnWords own)
    {
        var number = ReadNumber(held, own);
        var row = new ReadRow
        {
            Line = 0,
            Title = held.Title,
            TitleState = held.Title is null ? "unknown" : "given",
            Year = held.Year ?? RecordedDate.None,
            Technique = held.Technique,
            Extent = "someone-elses",
            EditionSize = number?.Number is { Of: { } of, Kind.InSize: true } ? of : null,
            StatedTotal = held.Total,
            Signed = held.Signed,
            Notes = held.Note,
        }.Bearing(number);
        var said = held.Statement is { } words ? row.Stating(StatedEdition.Read(words, own)) with { EditionStatement = words } : row;

        return said with { EditionKind = said.EditionKind ?? KindOf(said) };
    }

    private static string KindOf(ReadRow row) =>
        row.EditionIsOpen ? "open"
        : row.Number?.Of is not null || row.EditionSize is not null || row.EditionHedge is not null || row.NumberHedge is not null ? "limited"
        : "unknown";

    private static NumberOnSheet? ReadNumber(HeldSheet held, OwnWords own)
    {
        if (held.Number is null)
        {
            return null;
        }

        var read = NumberOnSheet.Read(held.Number, own) with { Written = held.Number };
        var number = read.Number ?? throw (read.IsImpossible ? KnownRefusals.NumberNotRead(held.Number) : KnownRefusals.WordsNameNoNumber(held.Number, read.WhyNot!));

        return held.Total is { } total && number is { Of: { } size, Kind.InSize: true } && total < size ? throw KnownRefusals.TotalTooSmall(total, size) : read;
    }

    /// <summary>The work another sheet of it is here of; never one of our own.</summary>
    private static Work? KnownWork(Reader reader, HeldSheet held)
    {
        if (held.Title is null || held.Maker is null)
        {
            return null;
        }

        var maker = SearchText.Fold(held.Maker);
        var known = reader.WorksTitled(held.Title).Select(id => reader.Work(id)!).FirstOrDefault(work => work.Makers.Any(one => SearchText.Fold(one.FullName) == maker));

        return known?.Editions.Any(edition => edition.IsOurs) == true ? throw KnownRefusals.IsOurs(known) : known;
    }

    private static void Free(ListedWork listed)
    {
        foreach (var edition in listed.Editions)
        {
            foreach (var numbering in edition.Numberings)
            {
                if (KnownEditions.Numbering(KnownEditions.Edition(listed.Known, edition), numbering) is { } there && listed.Known!.Impressions
                    .FirstOrDefault(sheet => sheet.Numbering == there.Id && sheet.Number is { } number && number == numbering.Rows.Select(numbering.OrdinalOf).FirstOrDefault()) is { } holder)
                {
                    throw EditionRefusals.NumberGiven(there.Spell(holder.Number) ?? there.KindWord, holder, listed.Known);
                }
            }
        }
    }
}

/// <summary>An impression of somebody else's edition, as a person says what it is; null is not known.</summary>
public sealed record HeldSheet
{
    public string? Title { get; init; }

    public string? Maker { get; init; }

    /// <summary>As it stands on the sheet, plainly or in words: 14/75, épreuve d'artiste 3/10.</summary>
    public string? Number { get; init; }

    /// <summary>The edition in somebody's words: edition of 75 plus 10 artist's proofs.</summary>
    public string? Statement { get; init; }

    /// <summary>All impressions there are, numbered and proofs, as stated by others.</summary>
    public int? Total { get; init; }

    public string? Place { get; init; }

    public string? With { get; init; }

    public string? Owner { get; init; }

    public RecordedDate? Year { get; init; }

    public string? Technique { get; init; }

    /// <summary>yes, no or unknown.</summary>
    public string Signed { get; init; } = "unknown";

    public string? Note { get; init; }
}
