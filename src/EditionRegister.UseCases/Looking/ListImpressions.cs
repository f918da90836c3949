using EditionRegister.Domain.People;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Domain.Text;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.Store.Lists;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Looking;

/// <summary>Lists impressions work by work, each in the order of its piles.</summary>
public sealed class ListImpressions(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">place-not-found or place-ambiguous.</exception>
    public ImpressionsListed Run(ImpressionsWanted wanted) => store.Read(reader =>
    {
        var filter = Filter(reader, wanted);
        var places = ImpressionList.Piled(reader, filter, wanted.Skip, wanted.Take ?? int.MaxValue);
        var works = places.Page.Select(place => place.Work).Distinct().Select(reader.Work).OfType<Work>().ToDictionary(work => work.Id);
        var sheets = works.Values.SelectMany(work => work.Impressions.Select(sheet => new ImpressionListed(work, sheet))).ToDictionary(listed => listed.Impression.Id);

        return new ImpressionsListed([.. places.Page.Select(place => sheets.GetValueOrDefault(place.Impression)).OfType<ImpressionListed>()], places.Found, places.All) { Sought = filter.Sought };
    });

    private static ImpressionFilter Filter(Reader reader, ImpressionsWanted wanted) => new()
    {
        // A place is searched by its name, so a path is searched name by name.
        Sought = Sought.Read([.. wanted.Texts.SelectMany(text => text.Split(AddressBook.Inside, StringSplitOptions.TrimEntries))], reader.OwnWords),
        MakerIds = wanted.Maker is { } maker ? [.. reader.Book.People.Values.Where(person => IsCalled(person, SearchText.Fold(maker))).Select(person => person.Id)] : null,
        PlaceId = wanted.Place is null ? null : Places.Find(reader.Book, wanted.Place),
        Standing = wanted.Standing,
        WorkId = wanted.Work,
        EditionId = wanted.Edition,
    };

    private static bool IsCalled(Person person, string maker) =>
        FormattableString.Invariant($"{person.Id}") == maker || SearchText.Fold(person.FullName).Contains(maker, StringComparison.Ordinal);
}
