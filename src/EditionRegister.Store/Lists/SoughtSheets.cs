using EditionRegister.Domain.Reading.Search;
using EditionRegister.Store.Mapping;
using EditionRegister.Store.Reading;
using Microsoft.EntityFrameworkCore;

namespace EditionRegister.Store.Lists;

/// <summary>The sheets that are asked for by what was read in a part of a search: by their number, their dates, or the technique of their work.</summary>
internal static class SoughtSheets
{
    extension(RegisterContext register)
    {
        /// <summary>Ask whether a sheet is among them: that works them out once, not sheet by sheet.</summary>
        public IQueryable<long> AskedFor(SoughtPart part, Reader reader, WorksSaid works)
        {
            SqlPieces sql = new();
            List<string> selects = [];

            if (part.Number is { } number)
            {
                selects.AddRange(NumberedSheets.Selects(sql, number, reader));
            }

            if (part.Dates is { } dates)
            {
                selects.AddRange(DatedSheets.Selects(sql, dates, reader));
            }

            if (part.Techniques.Count > 0)
            {
                selects.Add($"SELECT id FROM impression WHERE run IN (SELECT id FROM print_run WHERE work IN {sql.Ids(works.InTechniques(part))})");
            }

            return register.Database.SqlQuery<long>(sql.Whole($"""SELECT id AS "Value" FROM ({string.Join(" UNION ALL ", selects)})"""));
        }
    }
}
