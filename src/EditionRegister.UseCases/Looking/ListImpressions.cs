using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Text;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.Store.Lists;
using EditionRegister.UseCases.People;
using Found = EditionRegister.Store.Lists.ImpressionFilter;

namespace EditionRegister.UseCases.Looking;

/// <summary>Which impressions a list is to show; null asks for nothing.</summary>
public sealed record ImpressionFilter
{
    /// <summary>Every one of these is found in title, maker, code or place; case and accents make no difference.</summary>
    public IReadOnlyList<string> Texts { get; init; } = [];

    /// <summary>A part of the maker's name, or their number.</summary>
    public string? Maker { get; init; }

    /// <summary>A place, and every place in it.</summary>
    public string? Place { get; init; }

    /// <summary>pulled, kept, spare, left-out or held-out.</summary>
    public string? Standing { get; init; }

    public long? Work { get; init; }

    public long? Edition { get; init; }

    public int Skip { get; init; }

    /// <summary>How many at most.</summary>
    public int? Take { get; init; }
}

/// <summary>One impression of a list, with its work.</summary>
public sealed record ImpressionListed(Work Work, Impression Impression);

/// <summary>A page of a list, how many there are to page through, and how many the register has in all.</summary>
public sealed record ImpressionsListed(IReadOnlyList<ImpressionListed> Page, int Found, int All);

/// <summary>Lists impressions work by work, each in the order of its piles.</summary>
public sealed class ListImpressions(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">place-not-found or place-ambiguous.</exception>
    public ImpressionsListed Run(ImpressionFilter filter) => store.Read(reader =>
    {
        var places = ImpressionList.Piled(reader, InIds(reader.Book, filter), filter.Skip, filter.Take ?? int.MaxValue);
        var works = places.Page.Select(place => place.Work).Distinct().Select(reader.Work).OfType<Work>().ToDictionary(work => work.Id);
        var sheets = works.Values.SelectMany(work => work.Impressions.Select(sheet => new ImpressionListed(work, sheet))).ToDictionary(listed => listed.Impression.Id);

        return new ImpressionsListed([.. places.Page.Select(place => sheets.GetValueOrDefault(place.Impression)).OfType<ImpressionListed>()], places.Found, places.All);
    });

    private static Found InIds(AddressBook book, ImpressionFilter filter) => new()
    {
        // A place is searched by its name, so a path is searched name by name.
        Phrases = [.. filter.Texts.SelectMany(text => text.Split(AddressBook.Inside, StringSplitOptions.TrimEntries))],
        MakerIds = filter.Maker is { } maker ? [.. book.People.Values.Where(person => IsCalled(person, SearchText.Fold(maker))).Select(person => person.Id)] : null,
        PlaceId = filter.Place is null ? null : Places.Find(book, filter.Place),
        Standing = filter.Standing,
        WorkId = filter.Work,
        EditionId = filter.Edition,
    };

    private static bool IsCalled(Person person, string maker) =>
        FormattableString.Invariant($"{person.Id}") == maker || SearchText.Fold(person.FullName).Contains(maker, StringComparison.Ordinal);
}
