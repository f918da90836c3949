using EditionRegister.Domain.Reading.Search;
using EditionRegister.Store.Lists;

namespace EditionRegister.UseCases.Looking;

/// <summary>When the sheets of a line were printed. A run that gave no sheet yet counts on the first line of its work.</summary>
internal sealed class PrintedOnLines
{
    private readonly ChestSheets _sheets;
    private readonly Dictionary<long, DaysThere> _printed;
    private readonly ILookup<int, DaysThere> _withoutSheets;

    /// <param name="sheets">The sheets.</param>
    /// <param name="firstLineOf">The first line of a work.</param>
    public PrintedOnLines(ChestSheets sheets, Func<long, int> firstLineOf)
    {
        var dated = sheets.Runs.Where(run => run.Printed is not null).ToList();
        var withSheets = WithSheets(sheets);
        _sheets = sheets;
        _printed = dated.ToDictionary(run => run.Id, run => run.Printed!.Value);
        _withoutSheets = dated.Where(run => !withSheets.Contains(run.Id)).ToLookup(run => firstLineOf(run.Work), run => run.Printed!.Value);
    }

    /// <param name="line">The line.</param>
    /// <param name="sheets">Its sheets; those of a run stand together.</param>
    public IReadOnlyList<DaysThere> Of(int line, ReadOnlySpan<int> sheets)
    {
        List<DaysThere> printed = [.. _withoutSheets[line]];
        long last = 0;

        foreach (var sheet in sheets)
        {
            if (_sheets.Run[sheet] != last && _printed.TryGetValue(last = _sheets.Run[sheet], out var days))
            {
                printed.Add(days);
            }
        }

        return printed;
    }

    private static HashSet<long> WithSheets(ChestSheets sheets)
    {
        HashSet<long> runs = [];
        long last = 0;

        for (var sheet = 0; sheet < sheets.Count; sheet++)
        {
            if (sheets.Run[sheet] != last)
            {
                runs.Add(last = sheets.Run[sheet]);
            }
        }

        return runs;
    }
}
