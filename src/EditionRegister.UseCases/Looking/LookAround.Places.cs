using System.Globalization;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Looking;

public sealed partial class LookAround
{
    /// <summary>Everything that lies in a place, and in those inside it unless it alone is meant.</summary>
    /// <exception cref="Domain.RefusedException">place-not-found.</exception>
    public PlaceContents PlaceContents(long id, bool alone = false) => store.Read(reader =>
    {
        var place = reader.Book.Places.GetValueOrDefault(id) ?? throw PeopleRefusals.PlaceNotFound(id.ToString(CultureInfo.InvariantCulture));
        IReadOnlyCollection<long> within = alone ? [id] : [.. UseCases.People.Places.Within(reader.Book, id)];
        var things = Lying(reader, within).ToLookup(pair => pair.Place, pair => pair.Thing);

        return new PlaceContents(place, reader.Book.PathOf(id),
        [
            .. within.Select(inner => new PlacePart(inner, reader.Book.PathOf(inner), [.. things[inner]]))
                .OrderBy(part => part.Place != id).ThenBy(part => UseCases.People.Places.TreeOrder(part.Path), StringComparer.Ordinal).ThenBy(part => part.Place),
        ]);
    });

    private static IEnumerable<(long Place, LyingThing Thing)> Lying(Reader reader, IReadOnlyCollection<long> places) =>
        LyingMatrices(reader, places).Concat(LyingSheets(reader, places)).OrderBy(pair => pair.Thing.Work);

    private static IEnumerable<(long Place, LyingThing Thing)> LyingMatrices(Reader reader, IReadOnlyCollection<long> places) =>
        from ofWork in reader.MatricesIn(places).GroupBy(pair => pair.Work, pair => pair.Matrix)
        let work = reader.Work(ofWork.Key)
        where work is not null
        from matrix in work.Matrices
        let place = matrix.Place ?? 0
        where ofWork.Contains(matrix.Id)
        select (place, Of(work, matrix));

    private static IEnumerable<(long Place, LyingThing Thing)> LyingSheets(Reader reader, IReadOnlyCollection<long> places)
    {
        foreach (var ofWork in reader.StockIn(places).Where(thing => thing.Impression is not null).GroupBy(thing => thing.Work, thing => thing.Impression!.Value))
        {
            var lying = ofWork.ToHashSet();

            if (reader.Work(ofWork.Key) is { } work)
            {
                foreach (var sheet in work.Impressions.Where(sheet => lying.Contains(sheet.Id)))
                {
                    yield return (sheet.Where!.Place!.Value, new LyingThing(
                        work.Id, "sheet", sheet.ShownCode, work.ShownTitle, work.ShownMaker, work.NumberOf(sheet), WhereInWords.OwnerOf(work, sheet), sheet.Condition, sheet.Whereabouts[^1].Moved));
                }
            }
        }
    }

    private static LyingThing Of(Work work, Matrix matrix) => new(
        work.Id,
        matrix.Called,
        matrix.Code is null ? null : RegisterCode.TryParse(matrix.Code, out var code) ? code.ToString() : matrix.Code,
        work.ShownTitle,
        work.ShownMaker,
        matrix.Part ?? "",
        work.ShownMaker,
        matrix.Fate == "undecided" ? null : matrix.Fate.Replace('-', ' '),
        RecordedDate.None);
}
