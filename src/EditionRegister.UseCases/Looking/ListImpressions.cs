using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Text;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.People;

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
        var (found, all) = (0, 0);
        List<ImpressionListed> page = [];
        var matches = Matching(reader, filter);

        foreach (var listed in reader.Works().SelectMany(work => work.Impressions.Select(sheet => new ImpressionListed(work, sheet))))
        {
            all++;

            if (matches(listed) && ++found > filter.Skip && page.Count < (filter.Take ?? int.MaxValue))
            {
                page.Add(listed);
            }
        }

        return new ImpressionsListed(page, found, all);
    });

    private static Func<ImpressionListed, bool> Matching(Reader reader, ImpressionFilter filter)
    {
        long? place = filter.Place is null ? null : Places.Find(reader.Book, filter.Place);
        List<string> texts = [.. filter.Texts.Select(SearchText.Fold)];
        var maker = filter.Maker is null ? null : SearchText.Fold(filter.Maker);

        return listed =>
            (filter.Work is null || listed.Work.Id == filter.Work)
            && (filter.Edition is null || listed.Work.EditionOf(listed.Impression)?.Id == filter.Edition)
            && (filter.Standing is null || listed.Impression.Standing == filter.Standing)
            && (place is null || LiesIn(reader.Book, listed.Impression, place.Value))
            && (maker is null || listed.Work.Makers.Any(person => IsCalled(person, maker)))
            && (texts.Count == 0 || Speaks(listed, texts));
    }

    private static bool IsCalled(Person person, string maker) =>
        FormattableString.Invariant($"{person.Id}") == maker || SearchText.Fold(person.FullName).Contains(maker, StringComparison.Ordinal);

    private static bool LiesIn(AddressBook book, Impression sheet, long place)
    {
        HashSet<long> met = [];

        for (var at = sheet.Where?.Place; at is { } here && met.Add(here); at = book.Places.GetValueOrDefault(here)?.Inside)
        {
            if (here == place)
            {
                return true;
            }
        }

        return false;
    }

    private static bool Speaks(ImpressionListed listed, List<string> texts)
    {
        var (work, sheet) = listed;
        var where = sheet.Where?.Place is { } place ? work.Book.PathOf(place) : "";
        var whole = SearchText.Fold($"{work.ShownTitle}\n{work.ShownMaker}\n{sheet.ShownCode}\n{sheet.Code}\n{where}");

        return texts.TrueForAll(text => whole.Contains(text, StringComparison.Ordinal));
    }
}
