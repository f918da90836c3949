using System.Text;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Store.Reading;
using EditionRegister.Store.Sqlite;

namespace EditionRegister.Store.Lists;

/// <summary>What sheets say of their number that the register does not say already: a pencil or an inscription of another kind, number or size. Few do.</summary>
internal sealed class SheetSayings
{
    private static readonly string[] Facts = ["kind", "series", "number", "size", "notation"];

    private readonly Reader _reader;
    private readonly Dictionary<long, NumbersThere> _numberings = [];

    // Pencils are much alike: forty sheets of every edition bear 1/40 to 40/40.
    private readonly Dictionary<(string Pencilled, Notation? Expected), NumbersThere?> _read = [];
    private readonly List<(int Sheet, NumbersThere Says)> _all = [];

    public SheetSayings(Reader reader)
    {
        _reader = reader;
        using var command = reader.Connection.Command($"SELECT id, kind, notation, size, {reader.In(4, "hedged_size")} FROM numbering");
        using var row = command.ExecuteReader();

        while (row.Read())
        {
            var notation = Notation.TryFind(row.TextOrNull(2), out var known) && known != Notation.None ? known : null;
            _numberings[row.GetInt64(0)] = new(row.TextOrNull(1) ?? "", notation, (int?)(row.NumberOrNull(3) ?? row.NumberOrNull(4)), 0, 0);
        }
    }

    public IReadOnlyList<(int Sheet, NumbersThere Says)> All => _all;

    /// <summary>Number, pencil, and what was read in it, for a statement over impressions.</summary>
    public string Columns => $"number, pencilled, {Said("pencil")}";

    /// <param name="sheet">Its place in the list.</param>
    /// <param name="numbering">The numbering it belongs to, or 0.</param>
    /// <param name="rows">Its row.</param>
    /// <param name="column">Where <see cref="Columns"/> begin.</param>
    public void TakePencil(int sheet, long numbering, RawRows rows, int column)
    {
        if (rows.IsNull(column + 1) && rows.IsNull(column + 2))
        {
            return;
        }

        NumbersThere? given = !rows.IsNull(column) && _numberings.TryGetValue(numbering, out var known) ? known with { From = (int)rows.Number(column), To = (int)rows.Number(column) } : null;

        if ((SaidAt(rows, column + 2) is { } says ? NumbersThere.Said(says) : Read(Text(rows, column + 1), numbering)) is { } pencil && !Covers(given, pencil))
        {
            _all.Add((sheet, pencil));
        }
    }

    /// <param name="which">Which impressions, as the end of a statement.</param>
    /// <param name="sheets">The ids of the list, in order.</param>
    /// <param name="count">How many.</param>
    public void ReadInscriptions(string which, long[] sheets, int count)
    {
        if (_reader.Form < 4)
        {
            return;
        }

        using RawRows rows = new(_reader.Connection, $"SELECT impression, {Said("says")} FROM inscription{which}");

        while (rows.Read())
        {
            if (!rows.IsNull(1) && NumbersThere.Said(SaidAt(rows, 1)) is { } said && Array.BinarySearch(sheets, 0, count, rows.Number(0)) is >= 0 and var sheet)
            {
                _all.Add((sheet, said));
            }
        }
    }

    private string Said(string what) => string.Join(", ", Facts.Select(fact => _reader.In(4, $"{what}_{fact}")));

    private NumbersThere? Read(string? pencilled, long numbering)
    {
        if (pencilled is null)
        {
            return null;
        }

        var expected = _numberings.GetValueOrDefault(numbering).Notation;

        if (!_read.TryGetValue((pencilled, expected), out var read))
        {
            _read.Add((pencilled, expected), read = NumbersThere.OnPencil(null, pencilled, expected, _reader.OwnWords));
        }

        return read;
    }

    private static bool Covers(NumbersThere? given, NumbersThere says) =>
        given is { } known && known.Series == says.Series && (says.From == 0 || says.From == known.From)
        && (says.Notation is null || says.Notation == known.Notation) && (says.Size is null || says.Size == known.Size);

    private static SaidOfNumber? SaidAt(RawRows rows, int column) => Text(rows, column) is not { } kind ? null : new SaidOfNumber(kind)
    {
        Series = Text(rows, column + 1),
        Number = rows.IsNull(column + 2) ? null : (int)rows.Number(column + 2),
        Size = rows.IsNull(column + 3) ? null : (int)rows.Number(column + 3),
        Notation = Text(rows, column + 4),
    };

    private static string? Text(RawRows rows, int column) => rows.IsNull(column) ? null : Encoding.UTF8.GetString(rows.Utf8(column));
}
