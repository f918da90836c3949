using EditionRegister.Domain.Works;
using EditionRegister.Store.Mapping;
using Microsoft.EntityFrameworkCore;

namespace EditionRegister.Store.Lists;

/// <summary>Questions that more than one list asks, by name.</summary>
internal static class NamedQueries
{
    private static readonly string Maker = Role.Maker.Word;

    extension(IQueryable<WorkRow> works)
    {
        public IQueryable<WorkRow> WithTitleOrMaker(SearchWord word) => works.Where(work =>
            EF.Functions.Like(work.Search!, word.Anywhere, SearchWord.Escape)
            || work.Roles.Any(role => role.Role == Maker && EF.Functions.Like(role.Who.Search!, word.Anywhere, SearchWord.Escape))
            || (word.IsUntitled && work.TitleState == "untitled")
            || (word.IsUnknown && ((work.Title == null && work.TitleState != "untitled") || !work.Roles.Any(role => role.Role == Maker))));
    }

    extension(IQueryable<WhereaboutsRow> links)
    {
        /// <summary>Where sheets are by now: the last link of each chain.</summary>
        public IQueryable<WhereaboutsRow> Last() =>
            links.Where(link => !links.Any(later => later.Impression == link.Impression && later.Ordinal > link.Ordinal));
    }

    extension(RegisterContext register)
    {
        /// <summary>Sheets that lie in one of some places by now. Ask whether a sheet is among them: that works them out once, not sheet by sheet.</summary>
        public IQueryable<long> LyingIn(List<long> places) =>
            register.Whereabouts.Last().Where(link => places.Contains(link.ToPlace!.Value)).Select(link => link.Impression);

        /// <summary>Ids found by other means, as rows of a query, however many they are.</summary>
        public IQueryable<long> Ids(IEnumerable<long> ids)
        {
            SqlPieces sql = new();

            return register.Database.SqlQuery<long>(sql.Whole($"""SELECT value AS "Value" FROM {sql.Ids(ids)}"""));
        }
    }
}
