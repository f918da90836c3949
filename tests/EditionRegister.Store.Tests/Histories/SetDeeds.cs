using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests.Histories;

/// <summary>Works of parts with their copies, and who is to have which numbers.</summary>
internal sealed class SetDeeds(Known known, Draw draw)
{
    public Action<Writing>? Entitle() => known.Standing.Any() && Unentitled() is { Count: > 0 } numberings ? writing =>
    {
        var numbering = draw.Of(numberings);
        var deed = writing.On(Root.Work(numbering.Edition.Work));
        numbering.Entitled++;
        deed.Set(
            "entitlement", deed.NewId("entitlement"),
            [
                ("numbering", numbering.Id), ("first", numbering.Entitled), ("last", numbering.Entitled + draw.Below(2)), ("person", draw.Of(known.Standing.ToList()).Id),
                .. draw.Date("agreed"), ("note", draw.TextOrNull()),
            ]);
    } : null;

    public Action<Writing>? Make() => known.Works.Count > 1 && known.Works.Find(work => !work.IsSet) is { } work ? writing =>
    {
        var deed = writing.On(Root.Work(work.Id));
        var set = deed.NewId("print_set");
        work.IsSet = true;
        deed.Set("print_set", set,
            ("work", work.Id), ("form", draw.Of("portfolio", "suite", "folded-book", "bound-book", "exchange")),
            ("signed_on", draw.Of("colophon", "sheets", "both", "unknown")), ("note", draw.TextOrNull()));
        var parts = known.Works.Where(part => part != work).Take(3).ToList();

        for (var ordinal = 1; ordinal <= parts.Count; ordinal++)
        {
            deed.Set("set_part", deed.NewId("set_part"), ("print_set", set), ("ordinal", ordinal), ("part", parts[ordinal - 1].Id));
        }
    } : null;

    /// <summary>A sheet is laid into a copy, where it is the only one it lies in; taken out it may go into another.</summary>
    public Action<Writing>? Collate() => Free() is { Count: > 1 } sheets ? writing =>
    {
        var (copy, sheet) = (sheets[0], sheets[^1]);
        var deed = writing.On(Root.Work(copy.Work));
        known.InACopy.Add(sheet);
        copy.Named = sheet.Named = true;
        deed.Set("set_sheet", deed.NewId("set_sheet"), ("copy", copy.Id), ("sheet", sheet.Id), ("standing", draw.Of("in", "in", "taken-out")));
    } : null;

    private List<KnownSheet> Free() => [.. known.Here.Where(sheet => !known.InACopy.Contains(sheet))];

    private List<KnownNumbering> Unentitled() => [.. known.Editions.SelectMany(edition => edition.Numberings)];
}
