using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests.Histories;

/// <summary>At the bench: matrices in their states and with their codes, and passes with all that belongs to them.</summary>
internal sealed class BenchDeeds(Known known, Draw draw)
{
    public Action<Writing>? NameState() => OfMatrix((deed, work, matrix) =>
    {
        var id = deed.NewId("matrix_state");
        var states = work.States.TryGetValue(matrix, out var known) ? known : work.States[matrix] = [];
        states.Add(id);
        deed.Set("matrix_state", id,
            [("matrix", matrix), ("ordinal", states.Count), ("name", draw.Word("state")), .. draw.Date("reached"), ("note", draw.TextOrNull())]);
    });

    public Action<Writing>? GiveCode() => OfMatrix((deed, _, matrix) =>
        deed.Set("matrix_code", deed.NewId("matrix_code"), ("code", RegisterCode.Draw(draw.Below).Text), ("matrix", matrix)));

    public Action<Writing>? AddPass() => known.Standing.Any() && WithMatrices() is { Count: > 0 } works ? writing =>
    {
        var work = draw.Of(works);
        var run = draw.Of(work.Runs);
        var deed = writing.On(Root.Work(work.Id));
        AddPass(deed, run);
        AddWhatItTook(deed, work, run.Passes[^1].Id);
        AddWhatItCost(deed, run.Passes[^1].Id);
        AddSheets(deed, work, run.Passes[^1].Id);
    } : null;

    public Action<Writing>? EditPass() => OnePass() is { } pass ? writing =>
        writing.On(Root.Work(pass.Run.Work)).Set("pass", pass.Id, [("name", draw.Text()), .. draw.Date("done"), ("note", draw.TextOrNull())]) : null;

    /// <summary>A sheet is told to have come off the press after a pass.</summary>
    public Action<Writing>? Follow() => OnePass() is { } pass && known.Here.FirstOrDefault(sheet => sheet.Work == pass.Run.Work) is { } sheet ? writing =>
        writing.On(Root.Work(sheet.Work)).Set("impression", sheet.Id, ("after_pass", pass.Id)) : null;

    private static (int? In, int? Added, int? Out, int? Spoiled, int? HeldOut) Uncounted => (null, null, null, null, null);

    /// <summary>In and added are out, spoiled and held out; never more in than the pass before gave.</summary>
    private (int? In, int? Added, int? Out, int? Spoiled, int? HeldOut) Counts(KnownPass? before)
    {
        var (taken, added) = (before?.Out ?? draw.Between(4, 40), draw.Below(3));
        var spoiled = draw.Below(Math.Min(taken, 2) + 1);
        var heldOut = draw.Below(Math.Min(taken - spoiled, 1) + 1);

        return draw.Chance(20) ? Uncounted : (taken, added, taken + added - spoiled - heldOut, spoiled, heldOut);
    }

    private void AddPass(Deed deed, KnownRun run)
    {
        var reach = draw.Of("all", "all", "some");
        var counts = Counts(run.Passes.LastOrDefault());
        KnownPass pass = new(deed.NewId("pass"), run, reach == "all" ? counts.Out : null);
        run.Passes.Add(pass);
        deed.Set(
            "pass", pass.Id,
            [
                ("run", run.Id), ("ordinal", run.Passes.Count), ("kind", draw.Of("printed", "printed", "blind", "chine-colle", "hand-colouring", "leaf", "letterpress", "other")),
                ("name", draw.Text()), ("side", draw.Of("recto", "verso", "unknown")), ("reach", reach), .. draw.Date("done"),
                ("sheets_in", counts.In), ("added", counts.Added), ("sheets_out", counts.Out), ("spoiled", counts.Spoiled), ("held_out", counts.HeldOut),
                ("make_ready", draw.NumberOrNull(0, 9)), ("note", draw.TextOrNull()),
            ]);
    }

    private void AddWhatItTook(Deed deed, KnownWork work, long pass)
    {
        foreach (var matrix in work.Matrices.Take(2))
        {
            var states = work.States.GetValueOrDefault(matrix);
            deed.Set("pass_matrix", deed.NewId("pass_matrix"), ("pass", pass), ("matrix", matrix), ("state", states is null ? FactValue.Null : draw.Of(states)));
        }

        for (var ordinal = 1; ordinal <= draw.Between(1, 3); ordinal++)
        {
            deed.Set("pass_colour", deed.NewId("pass_colour"),
                ("pass", pass), ("ordinal", ordinal), ("colour", draw.Text()), ("ink", draw.Text()), ("manner", draw.Of("flat", "blend", "a-la-poupee", "unknown")));
        }

        deed.Set("pass_person", deed.NewId("pass_person"), ("pass", pass), ("person", draw.Of(known.Standing.ToList()).Id));
    }

    private void AddWhatItCost(Deed deed, long pass)
    {
        deed.Set("pass_spoiled", deed.NewId("pass_spoiled"), ("pass", pass), ("fault", draw.Of(known.Faults)), ("sheets", draw.Between(1, 3)));
        deed.Set("pass_held_out", deed.NewId("pass_held_out"), ("pass", pass), ("kind", draw.Of(known.Kinds).Word), ("sheets", draw.Between(1, 3)));
    }

    private void AddSheets(Deed deed, KnownWork work, long pass)
    {
        foreach (var sheet in known.Here.Where(sheet => sheet.Work == work.Id).Take(3))
        {
            sheet.Named = true;
            deed.Set("pass_sheet", deed.NewId("pass_sheet"), ("pass", pass), ("impression", sheet.Id));
        }
    }

    private List<KnownWork> WithMatrices() => [.. known.Works.Where(work => work.Matrices.Count > 0 && known.Here.Any(sheet => sheet.Work == work.Id))];

    private KnownPass? OnePass() =>
        known.Works.SelectMany(work => work.Runs).SelectMany(run => run.Passes).ToList() is { Count: > 0 } passes ? draw.Of(passes) : null;

    private Action<Writing>? OfMatrix(Action<Deed, KnownWork, long> change) =>
        known.Works.Where(work => work.Matrices.Count > 0).ToList() is { Count: > 0 } works ? writing =>
        {
            var work = draw.Of(works);
            change(writing.On(Root.Work(work.Id)), work, draw.Of(work.Matrices));
        } : null;
}
