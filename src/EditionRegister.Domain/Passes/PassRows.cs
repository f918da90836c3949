using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Domain.Passes;

/// <summary>The rows of a pass and of what belongs to it: made, changed to what they are to be, and taken away.</summary>
internal static class PassRows
{
    public static void Write(Pass pass, Pass? before, Deed deed)
    {
        deed.Set("pass", pass.Id,
            ("run", pass.Run), ("ordinal", pass.Ordinal), ("kind", pass.Kind), ("name", pass.Name), ("side", pass.Side), ("reach", pass.Reach),
            ("sheets_in", pass.SheetsIn), ("added", pass.Added), ("sheets_out", pass.SheetsOut), ("spoiled", pass.Spoiled), ("held_out", pass.HeldOut),
            ("make_ready", pass.MakeReady), ("note", pass.Note));
        deed.SetDate("pass", pass.Id, "done", pass.Done);

        Below<long>("pass_matrix", pass.Matrices.Select(one => (one.Matrix, Facts("matrix", one.Matrix, ("state", one.State)))), before?.Matrices.Select(one => (one.Matrix, one.Id)));
        Below<int>("pass_colour", pass.Colours.Select(one => (one.Ordinal, Facts("ordinal", one.Ordinal, ("colour", one.Colour), ("ink", one.Ink), ("manner", one.Manner)))), before?.Colours.Select(one => (one.Ordinal, one.Id)));
        Below<string>("pass_spoiled", pass.SpoiledBy.Select(one => (one.Word, Facts("fault", one.Word, ("sheets", one.Sheets)))), before?.SpoiledBy.Select(one => (one.Word, one.Id)));
        Below<string>("pass_held_out", pass.HeldOutAs.Select(one => (one.Word, Facts("kind", one.Word, ("sheets", one.Sheets)))), before?.HeldOutAs.Select(one => (one.Word, one.Id)));
        Below<long>("pass_person", pass.People.Select(one => (one.Person, Facts("person", one.Person))), before?.People.Select(one => (one.Person, one.Id)));
        Below<long>("pass_sheet", pass.Sheets.Select(one => (one.Impression, Facts("impression", one.Impression))), before?.Sheets.Select(one => (one.Impression, one.Id)));

        // A row that stays about the same thing keeps its id, so that no two rows are ever about one thing while they change.
        void Below<TKey>(string table, IEnumerable<(TKey Key, (string Fact, FactValue Value)[] Facts)> rows, IEnumerable<(TKey Key, long Id)>? were)
            where TKey : notnull
        {
            var left = were?.ToDictionary(row => row.Key, row => row.Id) ?? [];

            foreach (var (key, facts) in rows)
            {
                var id = left.Remove(key, out var same) ? same : deed.NewId(table);
                deed.Set(table, id, [("pass", pass.Id), .. facts]);
            }

            foreach (var (_, id) in left)
            {
                deed.Unset(table, id);
            }
        }
    }

    /// <summary>What belongs to the pass goes first: nothing may be left that points at it.</summary>
    public static void TakeAway(Pass pass, Deed deed)
    {
        var below = new[]
        {
            ("pass_matrix", pass.Matrices.Select(one => one.Id)), ("pass_colour", pass.Colours.Select(one => one.Id)), ("pass_person", pass.People.Select(one => one.Id)),
            ("pass_spoiled", pass.SpoiledBy.Select(one => one.Id)), ("pass_held_out", pass.HeldOutAs.Select(one => one.Id)), ("pass_sheet", pass.Sheets.Select(one => one.Id)),
        };

        foreach (var (table, ids) in below)
        {
            foreach (var id in ids)
            {
                deed.Unset(table, id);
            }
        }

        deed.Unset("pass", pass.Id);
    }

    private static (string Fact, FactValue Value)[] Facts(string key, FactValue value, params ReadOnlySpan<(string Fact, FactValue Value)> others) => [(key, value), .. others];
}
