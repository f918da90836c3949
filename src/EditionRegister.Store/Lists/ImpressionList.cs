using EditionRegister.Domain.Reading.Search;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Mapping;
using EditionRegister.Store.Reading;
using Microsoft.EntityFrameworkCore;

namespace EditionRegister.Store.Lists;

/// <summary>Impressions found, page by page, in the order of the piles they were pulled in.</summary>
public static class ImpressionList
{
    private static readonly string Maker = Role.Maker.Word;

    /// <summary>Read at the moment the reader reads at.</summary>
    public static ImpressionPlaces Piled(Reader reader, ImpressionFilter filter, int skip, int take)
    {
        using RegisterContext register = new(reader.Connection);
        var all = Placed(register, register.Impressions);
        var found = Placed(register, Filtered(register, reader, filter));
        var page = found
            .OrderBy(row => row.InRun.Work).ThenBy(row => row.InRun.Ordinal).ThenBy(row => row.Ordinal)
            .Skip(skip).Take(take)
            .Select(row => new ImpressionPlace(row.InRun.Work, row.Id));

        return new ImpressionPlaces([.. page], found.Count(), all.Count());
    }

    /// <summary>A row that damage tore from its run or its work has no place in a list; check tells of it.</summary>
    private static IQueryable<ImpressionRow> Placed(RegisterContext register, IQueryable<ImpressionRow> found) =>
        found.Where(row => register.Works.Any(work => work.Id == row.InRun.Work));

    private static IQueryable<ImpressionRow> Filtered(RegisterContext register, Reader reader, ImpressionFilter filter)
    {
        IQueryable<ImpressionRow> found = register.Impressions;
        found = filter.WorkId is { } work ? found.Where(row => row.InRun.Work == work) : found;
        found = filter.EditionId is { } edition ? found.Where(row => row.InNumbering!.Edition == edition) : found;
        found = filter.Standing is { } standing ? found.Where(row => row.Standing == standing) : found;
        found = filter.MakerIds is { } makers ? found.Where(row => row.InRun.OfWork.Roles.Any(role => role.Role == Maker && makers.Contains(role.Person))) : found;
        found = filter.PlaceId is { } place ? Lying(found, register.LyingIn(register.PlacesWithin(place))) : found;

        return filter.Sought.Code is { } code ? found.Where(row => row.Code == code) : Meeting(register, reader, found, filter.Sought);
    }

    private static IQueryable<ImpressionRow> Lying(IQueryable<ImpressionRow> found, IQueryable<long> lying) => found.Where(row => lying.Contains(row.Id));

    private static IQueryable<ImpressionRow> Meeting(RegisterContext register, Reader reader, IQueryable<ImpressionRow> found, Sought sought)
    {
        WorksSaid works = new(reader);

        foreach (var part in sought.Parts)
        {
            found = part.IsRead ? Meeting(register, found, part, register.AskedFor(part, reader, works), works) : part.Words.Aggregate(found, (rows, word) => WithWord(register, rows, SearchWord.Of(word), works));
        }

        return found;
    }

    private static IQueryable<ImpressionRow> Meeting(RegisterContext register, IQueryable<ImpressionRow> found, SoughtPart part, IQueryable<long> askedFor, WorksSaid works)
    {
        var inWords = part.Words.Aggregate(register.Impressions.AsQueryable(), (rows, word) => WithWord(register, rows, SearchWord.Of(word), works)).Select(row => row.Id);

        return found.Where(row => askedFor.Contains(row.Id) || inWords.Contains(row.Id));
    }

    private static IQueryable<ImpressionRow> WithWord(RegisterContext register, IQueryable<ImpressionRow> rows, SearchWord word, WorksSaid said)
    {
        var works = register.Works.WithTitleOrMaker(word).Select(work => work.Id);
        var lying = register.LyingIn(register.PlacesNamed(word));
        var saying = register.Ids(said.Saying(word));

        return rows.Where(row =>
            works.Contains(row.InRun.Work) || EF.Functions.Like(row.Code, word.InCode, SearchWord.Escape) || lying.Contains(row.Id) || saying.Contains(row.InRun.Work));
    }
}
