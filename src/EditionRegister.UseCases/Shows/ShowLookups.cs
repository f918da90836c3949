using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Shows;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Shows;

/// <summary>Finds a show and what is on its list, or refuses in words.</summary>
internal static class ShowLookups
{
    extension(Reader reader)
    {
        /// <exception cref="Domain.RefusedException">show-not-found.</exception>
        public Show ShowOrRefuse(long id) => reader.Show(id) ?? throw ShowRefusals.NoSuchShow(id);

        /// <summary>The sheets listed, in list order, each with its work.</summary>
        public IReadOnlyList<(Work Work, Impression Sheet)> SheetsOf(Show show, Func<long, Work> load)
        {
            var sheets = reader.WorksShownIn(show.Id).Select(load).SelectMany(work => work.Impressions.Select(sheet => (Work: work, Sheet: sheet))).ToDictionary(pair => pair.Sheet.Id);

            return [.. show.Listed.Where(listing => sheets.ContainsKey(listing.Impression)).Select(listing => sheets[listing.Impression])];
        }
    }
}
