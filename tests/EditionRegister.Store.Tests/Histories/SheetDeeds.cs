using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests.Histories;

/// <summary>Impressions: pulled, sorted, numbered, signed, inscribed.</summary>
internal sealed class SheetDeeds(Known known, Draw draw, ChainDeeds chains)
{
    public Action<Writing>? Pull() => known.Works.Count == 0 ? null : writing =>
    {
        var declared = known.Works.Where(work => work.Editions > 0).ToList();
        var work = declared.Count > 0 && draw.Chance(70) ? draw.Of(declared) : draw.Of(known.Works);
        var deed = writing.On(Root.Work(work.Id));

        for (var sheets = draw.Between(1, 4); sheets > 0; sheets--)
        {
            Pull(deed, draw.Of(work.Runs));
        }
    };

    public Action<Writing>? Sort() => (One(sheet => !sheet.Numbered && sheet.Standing == "pulled") ?? One(sheet => !sheet.Numbered)) is { } sheet ? writing =>
    {
        sheet.Standing = draw.Of("kept", "kept", "kept", "spare", "left-out", "held-out");
        writing.On(Root.Work(sheet.Work)).Set(
            "impression", sheet.Id,
            ("standing", sheet.Standing), ("fault", sheet.Standing == "left-out" ? draw.Of(known.Faults) : FactValue.Null), ("fault_note", draw.TextOrNull()));
    } : null;

    public Action<Writing>? Number()
    {
        var pairs = (
            from sheet in known.Sheets
            where !sheet.Gone && !sheet.Numbered && sheet.Standing is "kept" or "held-out"
            from edition in known.Editions
            where edition.Work == sheet.Work
            from numbering in edition.Numberings
            where sheet.Standing == "kept" || !numbering.InSize
            from number in numbering.Numbers
            where number.Open
            select (sheet, numbering, number)).Take(50).ToList();

        return pairs.Count == 0 ? null : writing =>
        {
            var (sheet, numbering, number) = draw.Of(pairs);
            number.Open = false;
            sheet.Numbered = true;
            sheet.Edition = numbering.Edition;
            numbering.Edition.Frozen |= sheet.SignedOrLeft;
            writing.On(Root.Work(sheet.Work)).Set(
                "impression", sheet.Id, [("numbering", numbering.Id), ("number", number.Ordinal), ("pencilled", draw.TextOrNull()), ("titled", draw.TextOrNull()), .. draw.Said("pencil")]);
        };
    }

    public Action<Writing>? Sign() => One(_ => true) is { } sheet ? writing =>
    {
        sheet.SignedOrLeft = true;
        sheet.Edition?.Frozen = true;
        writing.On(Root.Work(sheet.Work)).Set("impression", sheet.Id, ("signed", "yes"), ("signature", draw.TextOrNull()), ("condition", draw.TextOrNull()),
            ("variant", draw.TextOrNull()), ("dedication", draw.TextOrNull()));
    } : null;

    public Action<Writing>? Price() => One(_ => true) is { } sheet ? writing =>
    {
        var asking = draw.WideOrNull();
        writing.On(Root.Work(sheet.Work)).Set(
            "impression", sheet.Id,
            ("for_sale", draw.Of("by-custom", "yes", "no", "unknown")), ("asking", asking), ("asking_currency", asking.IsNull ? FactValue.Null : draw.Of("EUR", "JPY")),
            ("note", draw.TextOrNull()));
    } : null;

    public Action<Writing>? Inscribe() => One(_ => true) is { } sheet ? writing =>
    {
        var deed = writing.On(Root.Work(sheet.Work));
        var id = deed.NewId("inscription");
        sheet.Inscribed++;
        sheet.Inscriptions.Add(id);
        deed.Set(
            "inscription", id,
            [
                ("impression", sheet.Id), ("ordinal", sheet.Inscribed), ("side", draw.Of("front", "back", "unknown")),
                ("manner", draw.Of("written", "stamped", "embossed", "unknown")), ("position", draw.TextOrNull()), ("text", draw.TextOrNull()), .. draw.Said("says"),
            ]);

        if (sheet.Inscribed == 1 || draw.Chance(30))
        {
            sheet.LetteredRows.Add((id, deed.NewId("inscription_role")));
            deed.Set("inscription_role", sheet.LetteredRows[^1].Role, ("inscription", id), ("ordinal", 1), ("role", draw.Of("drew", "engraved", "printed")), ("name", draw.TextOrNull()));
        }
    } : null;

    public Action<Writing>? Unscribe() => One(sheet => sheet.Inscriptions.Count > 0) is { } sheet ? writing =>
    {
        var id = draw.Of(sheet.Inscriptions);
        sheet.Inscriptions.Remove(id);
        var deed = writing.On(Root.Work(sheet.Work));

        foreach (var (_, role) in sheet.LetteredRows.Where(row => row.Inscription == id))
        {
            deed.Unset("inscription_role", role);
        }

        deed.Unset("inscription", id);

        if (draw.Chance(30))
        {
            deed.Erase("inscription", id);
        }
    } : null;

    public KnownSheet Pull(Deed deed, KnownRun run)
    {
        KnownSheet sheet = new(deed.NewId("impression"), run.Work);
        var code = RegisterCode.Draw(draw.Below).Text;
        run.Sheets++;
        deed.Set("code", deed.NewId("code"), ("code", code), ("sheet", sheet.Id));
        deed.Set(
            "impression", sheet.Id,
            ("run", run.Id), ("ordinal", run.Sheets), ("code", code), ("standing", "pulled"), ("signed", draw.Of("no", "unknown")), ("for_sale", "by-custom"),
            ("note", draw.TextOrNull()));
        chains.Start(deed, sheet);
        known.Sheets.Add(sheet);

        return sheet;
    }

    private KnownSheet? One(Func<KnownSheet, bool> which) =>
        known.Sheets.Where(sheet => !sheet.Gone && which(sheet)).ToList() is { Count: > 0 } found ? draw.Of(found) : null;
}
