using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests.Histories;

/// <summary>Pictures, and how sheets were found to be.</summary>
internal sealed class ConditionDeeds(Known known, Draw draw)
{
    public Action<Writing>? Show() => known.Works.Count > 0 ? writing =>
    {
        var work = draw.Of(known.Works);
        var deed = writing.On(Root.Work(work.Id));
        var id = deed.NewId("picture");
        known.Pictures.Add((work.Id, id));
        work.Pictures++;
        deed.Set(
            "picture", id,
            [
                ("work", work.Id), ("ordinal", work.Pictures), ("impression", Sheet(work)?.Id),
                ("edition", known.Editions.Find(edition => edition.Work == work.Id)?.Id), ("matrix", work.Matrices.Count > 0 ? draw.Of(work.Matrices) : FactValue.Null),
                ("sha256", string.Concat(Enumerable.Range(0, 64).Select(_ => "0123456789abcdef"[draw.Below(16)]))),
                ("media", draw.Of("image/jpeg", "image/png", "image/webp")), ("bytes", draw.Between(1, 90_000_000)), ("width", draw.Between(1, 9_000)),
                ("height", draw.Between(1, 9_000)), ("file_name", draw.TextOrNull()), ("caption", draw.TextOrNull()), ("credit", draw.TextOrNull()),
                .. draw.Date("taken"), ("standing", "shown"),
            ]);
    } : null;

    public Action<Writing>? TakeOff() => known.Pictures.Count > 0 ? writing =>
    {
        var (work, picture) = draw.Of(known.Pictures);
        writing.On(Root.Work(work)).Set("picture", picture, ("standing", draw.Of("shown", "taken-off")));
    } : null;

    // The first stays, so that every history keeps something sealed of pictures.
    public Action<Writing>? ErasePicture() => known.Pictures.Count > 1 ? writing =>
    {
        var (work, picture) = known.Pictures[^1];
        writing.On(Root.Work(work)).Erase("picture", picture);
    } : null;

    public Action<Writing>? GrowTerms() => writing =>
    {
        var deed = writing.On(Root.Register);
        var word = draw.Word("term");
        known.Terms.Add(word);
        deed.Set("condition_term", deed.NewId("condition_term"), ("word", word), ("name", draw.Text()));
    };

    public Action<Writing>? Examine() => known.Standing.Any() && known.Here.ToList() is { Count: > 0 } sheets ? writing =>
    {
        var sheet = draw.Of(sheets);
        var deed = writing.On(Root.Work(sheet.Work));
        var report = deed.NewId("condition_report");
        sheet.Named = true;
        sheet.Reports++;
        deed.Set(
            "condition_report", report,
            [
                ("impression", sheet.Id), ("ordinal", sheet.Reports), ("occasion", draw.Of("at-rest", "going-out", "coming-back")), .. draw.Date("examined"),
                ("examiner", draw.Of(known.Standing.ToList()).Id), ("summary", draw.TextOrNull()),
            ]);

        for (var ordinal = 1; ordinal <= draw.Between(1, 3); ordinal++)
        {
            deed.Set("condition_remark", deed.NewId("condition_remark"),
                ("report", report), ("ordinal", ordinal), ("term", draw.Of(known.Terms)), ("position", draw.TextOrNull()), ("note", draw.TextOrNull()),
                ("picture", known.Pictures.Count > 0 ? draw.Of(known.Pictures).Id : FactValue.Null));
        }
    } : null;

    private KnownSheet? Sheet(KnownWork work)
    {
        var sheet = known.Here.FirstOrDefault(one => one.Work == work.Id);
        sheet?.Named = true;

        return sheet;
    }
}
