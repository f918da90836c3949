using EditionRegister.Domain.People;
using EditionRegister.Store.Lists;

namespace EditionRegister.UseCases.Looking;

/// <summary>
/// Lays every sheet on the line it belongs to: that of the edition it is numbered in, else that of its work's first edition, where it is found but not
/// counted, or that of its work without edition.
/// </summary>
internal sealed class SheetsOnLines(IReadOnlyList<ChestEntry> lines, ChestSheets sheets, AddressBook book, long? keeper)
{
    private const int Nowhere = -1;

    private readonly Dictionary<long, int> _byNumbering = [];
    private readonly Dictionary<long, int> _byWork = [];
    private readonly Dictionary<long, long> _keptBy = [];

    // By line: where its sheets start in _sheets; one more than there are lines.
    private readonly int[] _starts = new int[lines.Count + 1];
    private int[] _sheets = [];

    public IEnumerable<ChestEntry> Lay()
    {
        KnowLines();
        SortSheets();
        PrintedOnLines printed = new(sheets, work => _byWork.GetValueOrDefault(work, Nowhere));
        var sayings = sheets.Sayings.ToLookup(one => LineOf(one.Sheet), one => one.Says);

        for (var line = 0; line < lines.Count; line++)
        {
            var ofLine = _sheets.AsMemory(_starts[line], _starts[line + 1] - _starts[line]);
            var entry = ofLine.IsEmpty ? lines[line] : With(lines[line], line, ofLine.Span);

            yield return entry with { Days = [.. entry.Days.Union(printed.Of(line, ofLine.Span))], Numbers = [.. entry.Numbers.Union(sayings[line])] };
        }
    }

    private void KnowLines()
    {
        for (var line = 0; line < lines.Count; line++)
        {
            var work = lines[line].Line.Work;

            if (!_byWork.TryGetValue(work, out var first) || lines[line].Line.EditionOrdinal < lines[first].Line.EditionOrdinal)
            {
                _byWork[work] = line;
            }

            foreach (var numbering in lines[line].Edition?.Numberings ?? [])
            {
                _byNumbering[numbering.Id] = line;
            }
        }
    }

    private int LineOf(int sheet)
    {
        var work = sheets.Work[sheet];

        return _byNumbering.TryGetValue(sheets.Numbering[sheet], out var line) && lines[line].Line.Work == work ? line : _byWork.GetValueOrDefault(work, Nowhere);
    }

    /// <summary>A counting sort: the sheets of a line stand together, in the order of their ids.</summary>
    private void SortSheets()
    {
        var line = new int[sheets.Count];

        for (var sheet = 0; sheet < sheets.Count; sheet++)
        {
            line[sheet] = LineOf(sheet);

            if (line[sheet] != Nowhere)
            {
                _starts[line[sheet] + 1]++;
            }
        }

        for (var i = 0; i < lines.Count; i++)
        {
            _starts[i + 1] += _starts[i];
        }

        var next = _starts.AsSpan(0, lines.Count).ToArray();
        _sheets = new int[_starts[^1]];

        for (var sheet = 0; sheet < sheets.Count; sheet++)
        {
            if (line[sheet] != Nowhere)
            {
                _sheets[next[line[sheet]]++] = sheet;
            }
        }
    }

    private ChestEntry With(ChestEntry entry, int line, ReadOnlySpan<int> ofLine)
    {
        var codes = new byte[ofLine.Length * ChestSheets.CodeStride];
        var places = new long[ofLine.Length];
        var people = new long[ofLine.Length * 2];

        for (var i = 0; i < ofLine.Length; i++)
        {
            sheets.Codes.AsSpan(ofLine[i] * ChestSheets.CodeStride, ChestSheets.CodeStride).CopyTo(codes.AsSpan(i * ChestSheets.CodeStride));
            places[i] = sheets.Place[ofLine[i]];
            people[2 * i] = sheets.Holder[ofLine[i]];
            people[(2 * i) + 1] = sheets.Owner[ofLine[i]];
        }

        return entry with { Line = Counted(entry, line, ofLine), Codes = codes, Places = EachOnce(places), People = EachOnce(people) };
    }

    private ChestLine Counted(ChestEntry entry, int line, ReadOnlySpan<int> ofLine)
    {
        var (all, here, away, sold) = (0, 0, 0, 0);

        foreach (var sheet in ofLine)
        {
            if (entry.Edition is not null && !(_byNumbering.TryGetValue(sheets.Numbering[sheet], out var numbered) && numbered == line))
            {
                continue;
            }

            all++;
            _ = sheets.IsPassedOn[sheet] ? sold++ : Whose(sheet) is not { } has ? 0 : IsOurs(entry, has) ? here++ : away++;
        }

        return entry.Line with { Sheets = all, Here = here, Away = away, Sold = sold };
    }

    /// <summary>Who has the sheet: 0 is a place that nobody in particular keeps; null where nobody knows or the sheet is gone.</summary>
    private long? Whose(int sheet) => sheets.Position[sheet] switch
    {
        SheetPosition.Placed => sheets.Holder[sheet] != 0 ? sheets.Holder[sheet] : KeptBy(sheets.Place[sheet]),
        SheetPosition.With => sheets.Holder[sheet],
        _ => null,
    };

    private bool IsOurs(ChestEntry entry, long has) => has == 0 || has == keeper || entry.MakerIds.AsSpan().Contains(has);

    /// <summary>Who keeps a place, or the nearest one around it that is kept; 0 where nobody in particular does.</summary>
    private long KeptBy(long place)
    {
        if (!_keptBy.TryGetValue(place, out var kept))
        {
            HashSet<long> met = [];

            for (long? at = place; kept == 0 && at is { } here && met.Add(here) && book.Places.TryGetValue(here, out var found); at = found.Inside)
            {
                kept = found.Keeper ?? 0;
            }

            _keptBy.Add(place, kept);
        }

        return kept;
    }

    private static long[] EachOnce(long[] ids)
    {
        Array.Sort(ids);
        var count = 0;

        foreach (var id in ids)
        {
            if (id != 0 && (count == 0 || ids[count - 1] != id))
            {
                ids[count++] = id;
            }
        }

        return ids[..count];
    }
}
