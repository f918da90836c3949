using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests.Histories;

/// <summary>Where sheets are and whose: moves, sales, and links put right afterwards.</summary>
internal sealed class ChainDeeds(Known known, Draw draw)
{
    /// <summary>The first links of both chains.</summary>
    public void Start(Deed deed, KnownSheet sheet)
    {
        AddMove(deed, sheet, "pulled");
        AddTransfer(deed, sheet, "made");
    }

    public Action<Writing>? Move() => One(_ => true) is { } sheet ? writing =>
    {
        var (kind, leaves) = draw.Of(known.Moves);
        Left(sheet, leaves);
        AddMove(writing.On(Root.Work(sheet.Work)), sheet, kind);
    } : null;

    public Action<Writing>? Sell() => One(_ => true) is { } sheet ? writing =>
    {
        Left(sheet, true);
        AddTransfer(writing.On(Root.Work(sheet.Work)), sheet, "sold");
    } : null;

    /// <summary>A link inside the chain had the wrong end: that link and the one after it are set anew by one entry.</summary>
    public Action<Writing>? PutRight() => One(sheet => sheet.Whereabouts.Count > 1) is { } sheet ? writing =>
    {
        var at = draw.Below(sheet.Whereabouts.Count);
        var deed = writing.On(Root.Work(sheet.Work));
        var end = Position(sheet.Whereabouts[at].Id);
        deed.Set("whereabouts", end.Id, ("to_state", end.State), ("to_place", end.First), ("to_holder", end.Second), ("note", draw.TextOrNull()));
        sheet.Whereabouts[at] = end;

        if (at + 1 < sheet.Whereabouts.Count)
        {
            deed.Set("whereabouts", sheet.Whereabouts[at + 1].Id, ("from_state", end.State), ("from_place", end.First), ("from_holder", end.Second));
        }
    } : null;

    public Action<Writing>? TakeBack() => One(sheet => sheet.Ownership.Count > 1) is { } sheet ? writing =>
    {
        writing.On(Root.Work(sheet.Work)).Unset("ownership", sheet.Ownership[^1].Id);
        sheet.Ownership.RemoveAt(sheet.Ownership.Count - 1);
    } : null;

    private static FactValue State(KnownLink? link) => link?.State;

    private static void Left(KnownSheet sheet, bool leaves)
    {
        sheet.SignedOrLeft |= leaves;
        sheet.Edition?.Frozen |= leaves;
    }

    private void AddMove(Deed deed, KnownSheet sheet, string kind)
    {
        var before = sheet.Whereabouts.LastOrDefault();
        var link = Position(deed.NewId("whereabouts"));
        sheet.Whereabouts.Add(link);
        deed.Set(
            "whereabouts", link.Id,
            [
                ("impression", sheet.Id), ("ordinal", sheet.Whereabouts.Count), ("kind", kind),
                ("from_state", State(before)), ("from_place", before?.First), ("from_holder", before?.Second),
                ("to_state", link.State), ("to_place", link.First), ("to_holder", link.Second),
                .. draw.Date("moved"), .. draw.Date("until"), ("rate", draw.NumberOrNull(0, 10_000)), ("note", draw.TextOrNull()),
                ("agreement", draw.TextOrNull()), ("value", draw.WideOrNull()), ("value_currency", draw.Of("EUR", "JPY")),
                ("show", known.Shows.Count > 0 ? draw.Of(known.Shows).Id : (long?)null),
            ]);
    }

    private void AddTransfer(Deed deed, KnownSheet sheet, string kind)
    {
        var before = sheet.Ownership.LastOrDefault();
        var somebody = known.People.Count > 0 && draw.Chance(80);
        KnownLink link = new(deed.NewId("ownership"), somebody ? "known" : "unknown", somebody ? Somebody() : null, null);
        sheet.Ownership.Add(link);
        var price = draw.WideOrNull();
        deed.Set(
            "ownership", link.Id,
            [
                ("impression", sheet.Id), ("ordinal", sheet.Ownership.Count), ("kind", kind),
                ("from_state", State(before)), ("from_owner", before?.First), ("to_state", link.State), ("to_owner", link.First),
                ("agent", known.People.Count > 0 && draw.Chance(20) ? Somebody() : FactValue.Null), .. draw.Date("passed"),
                ("price", price), ("net", price.IsNull ? FactValue.Null : draw.NumberOrNull(0, 90_000)), ("currency", price.IsNull ? FactValue.Null : "EUR"),
                ("note", draw.TextOrNull()),
            ]);
    }

    private KnownLink Position(long id) => draw.Below(4) switch
    {
        0 when known.Places.Count > 0 => new KnownLink(id, "placed", draw.Of(known.Places), known.People.Count > 0 && draw.Chance(50) ? Somebody() : null),
        1 when known.People.Count > 0 => new KnownLink(id, "with", null, Somebody()),
        2 => new KnownLink(id, "gone", null, null),
        _ => new KnownLink(id, "unknown", null, null),
    };

    private long Somebody() => draw.Of(known.People).Id;

    private KnownSheet? One(Func<KnownSheet, bool> which) =>
        known.Sheets.Where(sheet => !sheet.Gone && which(sheet)).ToList() is { Count: > 0 } found ? draw.Of(found) : null;
}
