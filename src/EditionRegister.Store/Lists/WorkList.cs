using EditionRegister.Domain;
using EditionRegister.Store.Mapping;

namespace EditionRegister.Store.Lists;

/// <summary>One work as a list shows it, with how much there is of it.</summary>
/// <param name="Id">The work.</param>
/// <param name="Title">Its title, or null.</param>
/// <param name="TitleState">given, untitled or unknown.</param>
/// <param name="Makers">The makers' names, the one named first first; null where nobody is known.</param>
/// <param name="Technique">As written.</param>
/// <param name="Year">As written.</param>
/// <param name="Editions">How many editions were declared of it.</param>
/// <param name="Impressions">How many sheets are in the register.</param>
/// <param name="Kept">How many of them are kept.</param>
/// <param name="Numbered">How many of them bear a number.</param>
public sealed record WorkLine(
    long Id, string? Title, string TitleState, string? Makers, string? Technique, string? Year, int Editions, int Impressions, int Kept, int Numbered);

/// <summary>Works found, page by page, by maker and title.</summary>
public static class WorkList
{
    /// <param name="store">The register.</param>
    /// <param name="text">Words, each found in the title or in a maker's name or class code; null or blank finds all.</param>
    /// <param name="skip">How many to leave out.</param>
    /// <param name="take">How many to answer at most.</param>
    /// <exception cref="RefusedException">The register cannot be opened.</exception>
    public static IReadOnlyList<WorkLine> Find(RegisterStore store, string? text, int skip, int take) => store.List(register =>
    {
        var page = Filtered(register, text).InOrder().Skip(skip).Take(take).ToList();
        var ids = page.ConvertAll(work => work.Id);
        var makers = register.MakersOf(ids);
        var editions = register.Editions.Where(edition => ids.Contains(edition.Work)).GroupBy(edition => edition.Work)
            .Select(one => new { Work = one.Key, Count = one.Count() }).ToDictionary(one => one.Work, one => one.Count);
        var sheets = register.Impressions.Where(sheet => ids.Contains(sheet.InRun.Work)).GroupBy(sheet => sheet.InRun.Work)
            .Select(one => new { Work = one.Key, All = one.Count(), Kept = one.Count(sheet => sheet.Standing == "kept"), Numbered = one.Count(sheet => sheet.Number != null) })
            .ToDictionary(one => one.Work);

        return page.ConvertAll(work =>
        {
            var counts = sheets.GetValueOrDefault(work.Id);

            return new WorkLine(
                work.Id, work.Title, work.TitleState, makers.GetValueOrDefault(work.Id), work.Technique, work.Year,
                editions.GetValueOrDefault(work.Id), counts?.All ?? 0, counts?.Kept ?? 0, counts?.Numbered ?? 0);
        });
    });

    /// <summary>How many there are in all.</summary>
    /// <exception cref="RefusedException">The register cannot be opened.</exception>
    public static int Count(RegisterStore store, string? text) => store.List(register => Filtered(register, text).Count());

    private static IQueryable<WorkRow> Filtered(RegisterContext register, string? text) =>
        (text ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .Select(SearchWord.Of)
            .Aggregate((IQueryable<WorkRow>)register.Works, (works, word) => works.WithTitleOrMaker(word));
}
