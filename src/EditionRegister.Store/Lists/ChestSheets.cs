using System.Globalization;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Store.Reading;
using EditionRegister.Store.Sqlite;

namespace EditionRegister.Store.Lists;

/// <summary>How the last link of a sheet's whereabouts ends.</summary>
public enum SheetPosition : byte
{
    /// <summary>Nobody knows, or the sheet has no link.</summary>
    Unknown,
    Placed,
    With,
    Gone,
}

/// <summary>
/// What a list needs of every impression, a column for each fact, read in one pass over each table. 0 is the id of nothing. Damage is left out or
/// read as nothing, never thrown.
/// </summary>
public sealed class ChestSheets
{
    /// <summary>Bytes a code takes in <see cref="Codes"/>: its eight characters and a line feed after them.</summary>
    public const int CodeStride = 9;

    private const byte LineFeed = (byte)'\n';

    private static readonly byte[][] PassingOn =
        [.. MoveKind.All.Where(kind => kind is { Chain: "ownership", Leaves: true }).Select(kind => System.Text.Encoding.UTF8.GetBytes(kind.Word))];

    private readonly long[] _ids;
    private int _count;

    private ChestSheets(int count)
    {
        _ids = new long[count];
        Work = new long[count];
        Run = new long[count];
        Numbering = new long[count];
        Codes = new byte[count * CodeStride];
        Position = new SheetPosition[count];
        Place = new long[count];
        Holder = new long[count];
        Owner = new long[count];
        IsPassedOn = new bool[count];
    }

    public int Count => _count;

    public long[] Work { get; }

    public long[] Run { get; }

    /// <summary>Every run, also those that gave no sheet yet.</summary>
    public IReadOnlyList<ChestRun> Runs { get; private set; } = [];

    /// <summary>What sheets say of their number that the register does not say already, each with the sheet's place here.</summary>
    public IReadOnlyList<(int Sheet, NumbersThere Says)> Sayings { get; private set; } = [];

    public long[] Numbering { get; }

    /// <summary>The codes one after the other, each followed by a line feed; line feeds also fill up a code that damage shortened.</summary>
    public byte[] Codes { get; }

    public SheetPosition[] Position { get; }

    public long[] Place { get; }

    public long[] Holder { get; }

    public long[] Owner { get; }

    /// <summary>The last link of its ownership is a sale, a gift or another leaving of the maker's hands.</summary>
    public bool[] IsPassedOn { get; }

    /// <param name="reader">Where to read.</param>
    /// <param name="works">Only sheets of these works; null is all.</param>
    public static ChestSheets Read(Reader reader, IReadOnlyCollection<long>? works)
    {
        var ofWorks = works is null ? "" : $" WHERE work IN ({Listed(works)})";
        var runs = works is null ? "" : $" WHERE run IN (SELECT id FROM print_run{ofWorks})";
        var sheets = works is null ? "" : $" WHERE impression IN (SELECT id FROM impression{runs})";
        ChestSheets read = new((int)reader.Connection.Number("SELECT count(*) FROM impression" + runs));
        SheetSayings sayings = new(reader);
        read.Runs = reader.ChestRuns(works);
        read.ReadImpressions(reader, runs, sayings);
        sayings.ReadInscriptions(sheets, read._ids, read._count);
        read.Sayings = sayings.All;
        read.ReadWhereabouts(reader, sheets);
        read.ReadOwnership(reader, sheets);

        return read;
    }

    internal static string Listed(IEnumerable<long> ids) => string.Join(',', ids.Select(id => id.ToString(CultureInfo.InvariantCulture)));

    private void ReadImpressions(Reader reader, string which, SheetSayings sayings)
    {
        var works = Runs.ToDictionary(run => run.Id, run => run.Work);

        // NOT INDEXED: in the order of the ids, which the chains are searched by.
        using RawRows rows = new(reader.Connection, $"SELECT id, run, numbering, code, {sayings.Columns} FROM impression NOT INDEXED{which} ORDER BY id");

        for (; _count < _ids.Length && rows.Read(); _count++)
        {
            _ids[_count] = rows.Number(0);
            Run[_count] = rows.Number(1);
            Work[_count] = works.GetValueOrDefault(Run[_count]);
            Numbering[_count] = rows.Number(2);
            var code = Codes.AsSpan(_count * CodeStride, CodeStride);
            code.Fill(LineFeed);
            var found = rows.Utf8(3);
            found[..Math.Min(found.Length, CodeStride - 1)].CopyTo(code);
            sayings.TakePencil(_count, Numbering[_count], rows, 4);
        }
    }

    private void ReadWhereabouts(Reader reader, string which)
    {
        LastLinks last = new(_ids, _count);
        using RawRows rows = new(reader.Connection, "SELECT impression, ordinal, to_state, to_place, to_holder FROM whereabouts" + which);

        while (rows.Read())
        {
            if (last.Takes(rows.Number(0), rows.Number(1)) is >= 0 and var sheet)
            {
                Position[sheet] = PositionOf(rows.Utf8(2));
                Place[sheet] = rows.Number(3);
                Holder[sheet] = rows.Number(4);
            }
        }
    }

    private void ReadOwnership(Reader reader, string which)
    {
        LastLinks last = new(_ids, _count);
        using RawRows rows = new(reader.Connection, "SELECT impression, ordinal, kind, to_owner FROM ownership" + which);

        while (rows.Read())
        {
            if (last.Takes(rows.Number(0), rows.Number(1)) is >= 0 and var sheet)
            {
                IsPassedOn[sheet] = PassesOn(rows.Utf8(2));
                Owner[sheet] = rows.Number(3);
            }
        }
    }

    private static SheetPosition PositionOf(ReadOnlySpan<byte> state) =>
        state.SequenceEqual("placed"u8) ? SheetPosition.Placed
        : state.SequenceEqual("with"u8) ? SheetPosition.With
        : state.SequenceEqual("gone"u8) ? SheetPosition.Gone
        : SheetPosition.Unknown;

    private static bool PassesOn(ReadOnlySpan<byte> kind)
    {
        foreach (var one in PassingOn)
        {
            if (kind.SequenceEqual(one))
            {
                return true;
            }
        }

        return false;
    }
}
