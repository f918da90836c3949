using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Shows;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Shows;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Looking;

/// <summary>One impression whole: its work, and every entry that touched that work, newest first.</summary>
public sealed record ImpressionSeen(Work Work, Impression Impression, IReadOnlyList<LogbookLine> History);

/// <summary>A block, plate, stone or screen with the work that is printed from it.</summary>
public sealed record MatrixSeen(Work Work, Matrix Matrix);

/// <summary>Looks at the register without touching it.</summary>
public sealed partial class LookAround(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">code-misread or code-not-found.</exception>
    public ImpressionSeen Impression(string code) => store.Read(reader =>
    {
        var read = RegisterCode.TryParse(code, out var parsed) ? parsed : throw ImpressionRefusals.NotACode(code);
        var place = reader.FindCode(read.Text) ?? throw ImpressionRefusals.NoSuchCode(read.ToString());
        var work = reader.Work(place.Work)!;

        return new ImpressionSeen(work, work.Impressions.First(sheet => sheet.Id == place.Impression), reader.EntriesOf(Root.Work(work.Id).ToString()));
    });

    /// <summary>A matrix of a work by its number, its code or its part.</summary>
    /// <exception cref="Domain.RefusedException">work-not-found or matrix-not-found.</exception>
    public Matrix MatrixOf(long work, string named) => store.Read(reader => MatrixNamed.Find(reader.WorkOrRefuse(work), named));

    /// <summary>The matrix that has a code, with its work; null where none has, or it is no code.</summary>
    public MatrixSeen? MatrixOfCode(string code) => store.Read(reader =>
    {
        var place = RegisterCode.TryParse(code, out var read) ? reader.FindMatrixCode(read.Text) : null;

        return place is { } found && reader.Work(found.Work) is { } work ? new MatrixSeen(work, work.Matrices.First(matrix => matrix.Id == found.Matrix)) : null;
    });

    /// <exception cref="Domain.RefusedException">work-not-found.</exception>
    public Work Work(long id) => store.Read(reader => reader.WorkOrRefuse(id));

    /// <summary>Every work, whole.</summary>
    public IReadOnlyList<Work> Works() => store.Read(reader => reader.Works().ToList());

    /// <exception cref="Domain.RefusedException">edition-not-found.</exception>
    public (Work Work, Edition Edition) Edition(long id) => store.Read(reader => reader.EditionOrRefuse(id));

    public IReadOnlyList<ChosenOfWork> Chosen(ImpressionChoice choice) => store.Read(reader => ImpressionsChosen.Find(reader, choice));

    /// <summary>Every show with its list, oldest first.</summary>
    public IReadOnlyList<Show> Shows() => store.Read(reader => reader.Shows());

    /// <exception cref="Domain.RefusedException">show-not-found.</exception>
    public ShowSeen Show(long id) => store.Read(reader =>
    {
        var show = reader.ShowOrRefuse(id);
        var sheets = reader.SheetsOf(show, reader.WorkOrRefuse);

        return new ShowSeen(show, [.. sheets.Select(pair => new ImpressionListed(pair.Work, pair.Sheet))], reader.Book);
    });

    /// <summary>Kinds and faults that the register made for itself.</summary>
    public OwnWords OwnWords() => store.Read(reader => reader.OwnWords);

    public AddressBook Book() => store.Read(reader => reader.Book);

    public LogbookHead Head() => store.Read(reader => reader.Head);

    public IReadOnlyList<LogbookLine> Logbook(int newest) => store.Read(reader => reader.NewestEntries(newest));

    public LogbookLine? Entry(long n) => store.Read(reader => reader.Entry(n));
}
