using System.Globalization;
using System.Text.Json;
using EditionRegister.Store.Proof;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Logbook;

/// <summary>Plays stored entries into empty tables, one after another, as they were first written.</summary>
internal sealed class EntryPlayer(SqliteConnection connection) : IDisposable
{
    private readonly EntryReader _entry = new();
    private readonly RowWriter _rows = new(connection);
    private readonly Frontier _frontier = new();

    /// <summary>The form the register has after the entries played so far; the first has the tables that every register has.</summary>
    public int Form { get; private set; } = 1;

    /// <exception cref="JsonException">Not the entry that comes next, or not an entry.</exception>
    public void Play(StoredEntry stored, IEnumerable<StoredSealedFacts> sealedFacts)
    {
        _entry.Read(stored.Body);

        if (stored.N != _frontier.Size + 1 || _entry.N != stored.N)
        {
            throw new JsonException(string.Create(CultureInfo.InvariantCulture, $"entry {_frontier.Size + 1} is missing"));
        }

        LogbookRow.Insert(connection, _frontier, new EntryHead(_entry.N, _entry.At, _entry.Batch, _entry.By, _entry.Deed, _entry.Root), stored.Body);
        var unsealed = sealedFacts.ToDictionary(facts => facts.Index);

        for (var i = 0; i < _entry.Sets.Count; i++)
        {
            Set(_entry.Sets[i], unsealed.GetValueOrDefault(i));
        }

        foreach (var row in _entry.Unsets)
        {
            _rows.Unset(row.Table, row.Id);
        }

        foreach (var facts in unsealed.Values)
        {
            LogbookRow.InsertSealed(connection, facts.N, new SealedFacts(facts.Index, facts.Salt, facts.Body));
        }
    }

    public void SaveFrontier() => Frontiers.Write(connection, _frontier);

    public void Dispose() => _rows.Dispose();

    private void Set(ReadRow row, StoredSealedFacts? unsealed)
    {
        IEnumerable<ReadFact> facts = row.Facts;
        GrowTo(FormSaidBy(row));

        if (row.Facts.Count == 0 && row.Commitment is null)
        {
            _rows.Touch(row.Table, row.Id, _entry.N);

            return;
        }

        if (unsealed is not null)
        {
            var found = RowJson.ReadSealed(unsealed.Body);

            if (found.Table != row.Table || found.Id != row.Id)
            {
                throw new JsonException("its sealed facts speak of another row");
            }

            facts = facts.Concat(found.Facts);
        }

        _rows.Set(row.Table, row.Id, [.. facts.Select(fact => (row.Table.Facts[fact.Place], fact.Value))], _entry.N);
    }

    /// <summary>An entry that says the register has a newer form brings the tables of that form with it.</summary>
    private void GrowTo(long form)
    {
        if (form > Schema.Newest)
        {
            throw new JsonException(string.Create(CultureInfo.InvariantCulture, $"it speaks of form {form}, which only a newer program knows"));
        }

        if (form > Form)
        {
            Schema.MakeTables(connection, Form + 1, (int)form);
            Form = (int)form;
        }
    }

    private static long FormSaidBy(ReadRow row)
    {
        var place = row.Table.Name == "register" ? row.Table.PlaceOf("schema") : -1;
        var form = 0L;

        foreach (var fact in row.Facts)
        {
            form = fact.Place == place ? fact.Value.Number ?? 0 : form;
        }

        return form;
    }
}
