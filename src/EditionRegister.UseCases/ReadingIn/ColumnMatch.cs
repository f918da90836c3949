using EditionRegister.Domain.Text;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>What a header of the file was taken for: a column, or a note kept as written; and whether that was guessed or said.</summary>
public sealed record ColumnMatch(int Index, string Header, ReadInColumn? Column, bool WasSaid)
{
    /// <summary>Matches headers with columns; what was said with --map wins over every guess.</summary>
    /// <exception cref="Domain.RefusedException">map-not-read, map-header-unknown, map-column-unknown or column-twice.</exception>
    public static IReadOnlyList<ColumnMatch> All(IReadOnlyList<string> headers, IReadOnlyList<string> maps)
    {
        var said = maps.Select(map => Said(map, headers)).ToDictionary(pair => pair.Index, pair => pair.Column);
        HashSet<ReadInColumn> taken = [.. said.Values.OfType<ReadInColumn>()];
        List<ColumnMatch> matches = [];

        if (said.Values.OfType<ReadInColumn>().GroupBy(column => column).FirstOrDefault(same => same.Count() > 1) is { Key: var twice })
        {
            throw ReadInRefusals.ColumnTwice(twice, headers.Where((_, i) => said.GetValueOrDefault(i) == twice));
        }

        for (var i = 0; i < headers.Count; i++)
        {
            if (said.TryGetValue(i, out var column))
            {
                matches.Add(new ColumnMatch(i, headers[i], column, WasSaid: true));
            }
            else
            {
                var guess = ReadInColumn.Guess(headers[i]);
                matches.Add(new ColumnMatch(i, headers[i], guess is not null && taken.Add(guess) ? guess : null, WasSaid: false));
            }
        }

        return matches;
    }

    private static (int Index, ReadInColumn? Column) Said(string map, IReadOnlyList<string> headers)
    {
        if (map.LastIndexOf('=') is not (> 0 and var sign))
        {
            throw ReadInRefusals.MapNotRead(map);
        }

        var (header, name) = (map[..sign].Trim(), map[(sign + 1)..].Trim());
        var index = headers.ToList().FindIndex(known => SearchText.Fold(known.Trim()) == SearchText.Fold(header));

        return index < 0 ? throw ReadInRefusals.MapHeaderUnknown(header, headers)
            : name.Length == 0 || name == "keep" ? (index, null)
            : (index, ReadInColumn.Named(name) ?? throw ReadInRefusals.MapColumnUnknown(name));
    }
}
