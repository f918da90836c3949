using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Works;

/// <summary>Finds works and editions, or says that there are none of that number.</summary>
internal static class WorkLookups
{
    extension(Reader reader)
    {
        /// <exception cref="Domain.RefusedException">work-not-found.</exception>
        public Work WorkOrRefuse(long id) => reader.Work(id) ?? throw WorkRefusals.NoSuchWork(id);

        /// <exception cref="Domain.RefusedException">edition-not-found.</exception>
        public (Work Work, Edition Edition) EditionOrRefuse(long id)
        {
            var work = reader.EditionsWork(id) is { } found ? reader.Work(found) : null;

            return work is null ? throw EditionRefusals.NoSuchEdition(id) : (work, work.Editions.First(edition => edition.Id == id));
        }
    }
}
