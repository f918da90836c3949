using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests.Histories;

/// <summary>Documents issued and superseded; files read in and undone again.</summary>
internal sealed class PaperDeeds(Known known, Draw draw, SheetDeeds sheets)
{
    private int _serial;

    public Action<Writing>? Issue() => One() is { } sheet ? writing =>
    {
        var deed = writing.On(Root.Work(sheet.Work));
        var before = sheet.Certificate;

        if (before is { } old)
        {
            deed.Set("document", old, ("standing", "superseded"));
        }

        sheet.Certificate = Add(deed, sheet, "certificate", before);
    } : null;

    public Action<Writing>? Withdraw() => One() is { Certificate: { } valid } sheet ? writing =>
    {
        sheet.Certificate = null;
        writing.On(Root.Work(sheet.Work)).Set("document", valid, ("standing", "withdrawn"));
    } : null;

    public Action<Writing>? Label() => One() is { } sheet ? writing => Add(writing.On(Root.Work(sheet.Work)), sheet, "label", null) : null;

    public Action<Writing>? ReadIn() => known.Works.Count < 2 ? null : writing =>
    {
        var hash = string.Concat(Enumerable.Range(0, 64).Select(_ => "0123456789abcdef"[draw.Below(16)]));
        KnownBatch batch = new(writing.StartBatch("read-in", ("sha256", hash), ("rows", draw.Between(1, 9)), ("file_name", draw.TextOrNull())));

        for (var line = 1; line <= draw.Between(1, 4); line++)
        {
            var work = draw.Of(known.Works);
            var deed = writing.On(Root.Work(work.Id));
            var sheet = sheets.Pull(deed, draw.Of(work.Runs));
            batch.Sheets.Add(sheet);
            Keep(deed, sheet, batch, line);
        }

        known.Batches.Add(batch);
    };

    public Action<Writing>? Undo() => known.Batches.Find(batch => !batch.Undone && batch.Sheets.TrueForAll(Untouched)) is { } batch ? writing =>
    {
        var deed = writing.On(Root.Batch(batch.Id));
        batch.Undone = true;
        deed.Set("batch", batch.Id, ("undone", "yes"));

        foreach (var sheet in batch.Sheets)
        {
            sheet.Gone = true;
            Unset(deed, "kept_column", sheet.Kept);
            Unset(deed, "inscription_role", [.. sheet.LetteredRows.Where(row => sheet.Inscriptions.Contains(row.Inscription)).Select(row => row.Role)]);
            Unset(deed, "inscription", sheet.Inscriptions);
            Unset(deed, "whereabouts", sheet.Whereabouts.Select(link => link.Id).Reverse());
            Unset(deed, "ownership", sheet.Ownership.Select(link => link.Id).Reverse());
            deed.Unset("impression", sheet.Id);
        }
    } : null;

    private static bool Untouched(KnownSheet sheet) => sheet.Documents.Count == 0 && !sheet.Named;

    private static void Unset(Deed deed, string table, IEnumerable<long> ids)
    {
        foreach (var id in ids)
        {
            deed.Unset(table, id);
        }
    }

    private void Keep(Deed deed, KnownSheet sheet, KnownBatch batch, int line)
    {
        var id = deed.NewId("kept_column");
        sheet.Kept.Add(id);
        deed.Set("kept_column", id, ("impression", sheet.Id), ("batch", batch.Id), ("line", line), ("header", draw.TextOrNull()), ("value", draw.TextOrNull()));
    }

    private long Add(Deed deed, KnownSheet sheet, string kind, long? supersedes)
    {
        var id = deed.NewId("document");
        sheet.Documents.Add(id);
        deed.Set(
            "document", id,
            ("kind", kind), ("impression", sheet.Id), ("serial", $"C-{++_serial:0000}"), ("issued", "2026-03"), ("issued_earliest", "2026-03-01"), ("issued_latest", "2026-03-31"), ("issued_edtf", draw.Of("2026-03", "2026-03~")),
            ("standing", "valid"), ("supersedes", supersedes), ("statement", draw.TextOrNull()));

        return id;
    }

    private KnownSheet? One() => known.Sheets.Where(sheet => !sheet.Gone).ToList() is { Count: > 0 } found ? draw.Of(found) : null;
}
