using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests.Histories;

/// <summary>Sheets put by for somebody, and what was found in a place.</summary>
internal sealed class StockDeeds(Known known, Draw draw)
{
    public Action<Writing>? Reserve() => known.Standing.Any() && known.Here.Where(sheet => !sheet.Reserved).ToList() is { Count: > 0 } sheets ? writing =>
    {
        var sheet = draw.Of(sheets);
        var deed = writing.On(Root.Work(sheet.Work));
        var id = deed.NewId("reservation");
        sheet.Named = sheet.Reserved = true;
        known.Reservations.Add((sheet, id));
        deed.Set(
            "reservation", id,
            [
                ("impression", sheet.Id), ("person", draw.Of(known.Standing.ToList()).Id), .. draw.Date("made"), .. draw.Date("until"), ("standing", "standing"),
                ("note", draw.TextOrNull()),
            ]);
    } : null;

    public Action<Writing>? Lift() => known.Reservations.Count > 0 ? writing =>
    {
        var (sheet, id) = draw.Of(known.Reservations);
        known.Reservations.Remove((sheet, id));
        sheet.Reserved = false;
        writing.On(Root.Work(sheet.Work)).Set("reservation", id, ("standing", draw.Of("lifted", "fulfilled")));
    } : null;

    public Action<Writing>? Take() => known.Places.Count > 0 && known.Standing.Any() && known.Here.ToList() is { Count: > 0 } sheets ? writing =>
    {
        var place = draw.Of(known.Places);
        var deed = writing.On(Root.Place(place));
        var id = deed.NewId("stock_take");
        deed.Set(
            "stock_take", id,
            [
                ("place", place), ("occasion", draw.Of("stock-take", "delivery", "return")), .. draw.Date("taken"),
                ("person", draw.Of(known.Standing.ToList()).Id), ("note", draw.TextOrNull()),
            ]);

        for (var ordinal = 1; ordinal <= draw.Between(1, 4); ordinal++)
        {
            AddLine(deed, id, ordinal, draw.Of(sheets));
        }
    } : null;

    private void AddLine(Deed deed, long take, int ordinal, KnownSheet sheet)
    {
        var matrix = known.Works.SelectMany(work => work.Matrices).Select(id => (long?)id).FirstOrDefault();
        sheet.Named = true;
        deed.Set("stock_take_line", deed.NewId("stock_take_line"),
            ("stock_take", take), ("ordinal", ordinal), ("code", draw.Word("code")), ("impression", sheet.Id), ("matrix", draw.Chance(50) ? matrix : FactValue.Null),
            ("outcome", draw.Of("present", "missing", "stranger", "not-ours")));
    }
}
