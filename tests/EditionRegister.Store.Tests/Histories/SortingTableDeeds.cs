using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests.Histories;

/// <summary>At the sorting table: grades, what one sheet is to another, and what was altered on the paper.</summary>
internal sealed class SortingTableDeeds(Known known, Draw draw)
{
    public Action<Writing>? Grade() => One(_ => true) is { } sheet ? writing =>
    {
        var deed = writing.On(Root.Work(sheet.Work));
        sheet.Named = true;
        sheet.Grade ??= deed.NewId("grade");
        deed.Set(
            "grade", sheet.Grade.Value,
            [
                ("impression", sheet.Id), ("registration", draw.NumberOrNull(1, 5)), ("inking", draw.NumberOrNull(1, 5)), ("edges", draw.NumberOrNull(1, 5)),
                ("cleanness", draw.NumberOrNull(1, 5)), ("likeness", draw.NumberOrNull(1, 5)), ("against", draw.Of("guide-sheet", "bon-a-tirer", "unknown")),
                .. draw.Date("graded"), ("note", draw.TextOrNull()),
            ]);
    } : null;

    public Action<Writing>? Link() => One(sheet => sheet.Links.Count < 2) is { } sheet && One(other => other != sheet && other.Work == sheet.Work) is { } other ? writing =>
    {
        var kind = draw.Of(new[] { "ghost-of", "replaces" }.Except(sheet.Links).ToList());
        var deed = writing.On(Root.Work(sheet.Work));
        sheet.Links.Add(kind);
        sheet.Named = other.Named = true;
        deed.Set("sheet_link", deed.NewId("sheet_link"),
            [("impression", sheet.Id), ("kind", kind), ("other", other.Id), .. draw.Date("made"), ("note", draw.TextOrNull())]);
    } : null;

    public Action<Writing>? Change() => One(_ => true) is { } sheet ? writing =>
    {
        var deed = writing.On(Root.Work(sheet.Work));
        sheet.Named = true;
        sheet.Changes++;
        deed.Set(
            "sheet_change", deed.NewId("sheet_change"),
            [
                ("impression", sheet.Id), ("ordinal", sheet.Changes), ("what", draw.Of("number", "title", "signature", "inscription", "other")),
                ("was", draw.TextOrNull()), ("became", draw.TextOrNull()), ("reason", draw.TextOrNull()), .. draw.Date("changed"),
            ]);
    } : null;

    private KnownSheet? One(Func<KnownSheet, bool> which) => known.Here.Where(which).ToList() is { Count: > 0 } found ? draw.Of(found) : null;
}
