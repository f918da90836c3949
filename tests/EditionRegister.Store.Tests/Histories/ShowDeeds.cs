using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests.Histories;

/// <summary>Shows made and changed, sheets listed for them and taken off again; findings accepted with a reason.</summary>
internal sealed class ShowDeeds(Known known, Draw draw)
{
    public Action<Writing>? Make() => known.Places.Count == 0 ? null : writing =>
    {
        KnownShow show = new(writing.NewId("show"));
        known.Shows.Add(show);
        var deed = writing.On(Root.Show(show.Id));
        deed.Set("show", show.Id,
            ("name", draw.Text()), ("kind", draw.Of("exhibition", "sale", "fair", "other")), ("place", draw.Of(known.Places)),
            ("host", known.People.Count > 0 ? draw.Of(known.People).Id : (long?)null), ("note", draw.Text()));
        deed.Set("show", show.Id, draw.Date("opens"));
        deed.Set("show", show.Id, draw.Date("closes"));
    };

    public Action<Writing>? Add() => Show() is { } show && NotYetIn(show) is { } sheet ? writing =>
    {
        var deed = writing.On(Root.Show(show.Id));
        var id = deed.NewId("show_impression");
        sheet.Named = true;
        show.Rows.Add(sheet, id);
        deed.Set("show_impression", id, ("show", show.Id), ("impression", sheet.Id), ("ordinal", show.Rows.Count), ("standing", "listed"));
    } : null;

    public Action<Writing>? Remove() => Show() is { Rows.Count: > 0 } show ? writing =>
        writing.On(Root.Show(show.Id)).Set("show_impression", draw.Of([.. show.Rows.Values]), ("standing", draw.Of("taken-off", "listed"))) : null;

    public Action<Writing>? Edit() => Show() is { } show ? writing =>
    {
        var deed = writing.On(Root.Show(show.Id));
        deed.Set("show", show.Id, ("name", draw.TextOrNull()), ("place", FactValue.Null));
        deed.Set("show", show.Id, draw.Date("closes"));
    } : null;

    // The first of them stay, so that every history keeps something sealed of them.
    public Action<Writing>? Erase() => known.Shows.Count > 1 ? writing => writing.On(Root.Show(known.Shows[^1].Id)).Erase("show", known.Shows[^1].Id) : null;

    public Action<Writing>? Accept() => known.Works.Count == 0 ? null : writing =>
    {
        var work = draw.Of(known.Works);
        var deed = writing.On(Root.Work(work.Id));
        var id = deed.NewId("accepted_finding");
        known.Acceptances.Add(id);
        deed.Set("accepted_finding", id,
            ("rule", draw.Of("SheetsBalance", "NumbersAreUnique")), ("severity", draw.Of("note", "query", "contradiction")), ("subject_kind", "work"),
            ("subject_id", work.Id), ("finding", draw.Text()), ("reason", draw.Text()), ("withdrawn", "no"),
            ("accepted", "2026-03"), ("accepted_earliest", "2026-03-01"), ("accepted_latest", "2026-03-31"), ("accepted_edtf", draw.Of("2026-03", "2026-03~")));
    };

    public Action<Writing>? TakeBack() => OneAccepted() is { } id ? writing =>
        writing.On(Root.Register).Set("accepted_finding", id, ("withdrawn", "yes")) : null;

    public Action<Writing>? EraseAcceptance() => known.Acceptances.Count > 1 ? writing => writing.On(Root.Register).Erase("accepted_finding", known.Acceptances[^1]) : null;

    private long? OneAccepted() => known.Acceptances.Count > 0 ? draw.Of(known.Acceptances) : null;

    private KnownShow? Show() => known.Shows.Count > 0 ? draw.Of(known.Shows) : null;

    private KnownSheet? NotYetIn(KnownShow show) => known.Sheets.Find(sheet => !sheet.Gone && !show.Rows.ContainsKey(sheet));
}
