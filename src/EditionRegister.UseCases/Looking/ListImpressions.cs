using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.Store.Lists;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Looking;

/// <summary>Which impressions a list is to show, as a person names them; null asks for nothing.</summary>
public sealed record ImpressionsWanted
{
    /// <summary>A whole code; or words, each found in title, maker, place, or at the beginning of the code. Case and accents make no difference.</summary>
    public string? Text { get; init; }

    /// <summary>As in the address book: a name, a part of it, or a number.</summary>
    public string? Maker { get; init; }

    /// <summary>A place, with every place in it.</summary>
    public string? Place { get; init; }

    /// <summary>pulled, kept, spare, left-out or held-out.</summary>
    public string? Standing { get; init; }

    public long? Work { get; init; }

    public long? Edition { get; init; }

    public int Skip { get; init; }

    /// <summary>How many at most.</summary>
    public int Take { get; init; } = int.MaxValue;
}

/// <summary>One impression of a list, with its work.</summary>
public sealed record ImpressionListed(Work Work, Impression Impression);

/// <summary>A page of a list, how many there are to page through, and how many the register has in all.</summary>
public sealed record ImpressionsListed(IReadOnlyList<ImpressionListed> Page, int Found, int All);

/// <summary>Lists impressions by maker, title, numbering, number and code.</summary>
public sealed class ListImpressions(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">person-not-found, person-ambiguous, place-not-found or place-ambiguous.</exception>
    public ImpressionsListed Run(ImpressionsWanted wanted)
    {
        var filter = FilterOf(wanted, store.Read(reader => reader.Book));
        var lines = ImpressionList.Find(store, filter, wanted.Skip, wanted.Take);

        return new ImpressionsListed(
            store.Read(reader => Whole(reader, lines)),
            ImpressionList.Count(store, filter),
            ImpressionList.Count(store, new ImpressionFilter()));
    }

    private static ImpressionFilter FilterOf(ImpressionsWanted wanted, AddressBook book) => new()
    {
        Text = wanted.Text,
        MakerId = wanted.Maker is { } maker ? Persons.Find(book, maker) : null,
        PlaceId = wanted.Place is { } place ? Places.Find(book, place) : null,
        Standing = wanted.Standing,
        WorkId = wanted.Work,
        EditionId = wanted.Edition,
    };

    // The list says which and in what order; the works say it all. What was taken out between the two is not shown.
    private static List<ImpressionListed> Whole(Reader reader, IReadOnlyList<ImpressionLine> lines)
    {
        var works = lines.Select(line => line.WorkId).Distinct().Select(reader.Work).OfType<Work>().ToList();
        var sheets = works.SelectMany(work => work.Impressions.Select(sheet => new ImpressionListed(work, sheet))).ToDictionary(listed => listed.Impression.Id);

        return [.. lines.Select(line => sheets.GetValueOrDefault(line.Id)).OfType<ImpressionListed>()];
    }
}
