using EditionRegister.Domain.Impressions;

namespace EditionRegister.Tui.Bench;

/// <summary>The sheet under the eyes while a pile is graded: which aspect is asked, and the marks given but not yet written. Written sheet by sheet.</summary>
internal sealed class GradingHand
{
    private readonly Dictionary<GradeAspect, int?> _given = [];

    public int Asked { get; private set; }

    public GradeAspect Aspect => GradeAspect.All[Asked];

    public bool IsLast => Asked == GradeAspect.All.Count - 1;

    public bool IsFirst => Asked == 0;

    public bool HasUnwritten => _given.Count > 0;

    /// <summary>The mark as it will stand: as given now, else as on record.</summary>
    public int? MarkOf(GradeAspect aspect, Impression sheet) => _given.TryGetValue(aspect, out var mark) ? mark : aspect.MarkOf(sheet.Grade);

    public bool IsUnwritten(GradeAspect aspect) => _given.ContainsKey(aspect);

    /// <summary>A mark, or null that nobody looked.</summary>
    public void Give(int? mark) => _given[Aspect] = mark;

    public void Give(GradeAspect aspect, int? mark) => _given[aspect] = mark;

    public void Ask(int aspect) => Asked = Math.Clamp(aspect, 0, GradeAspect.All.Count - 1);

    /// <summary>What is to be written; null where nothing was given that is not on record already.</summary>
    public GradeGiven? Taken(Impression sheet, string? against)
    {
        var changed = _given.Where(mark => mark.Value != mark.Key.MarkOf(sheet.Grade)).ToList();

        return changed.Count == 0 ? null : new GradeGiven
        {
            Marks = changed.Where(mark => mark.Value is not null).ToDictionary(mark => mark.Key, mark => mark.Value!.Value),
            NotLooked = [.. changed.Where(mark => mark.Value is null).Select(mark => mark.Key)],
            Against = against,
        };
    }

    /// <summary>Another sheet: from its first aspect on, with nothing given.</summary>
    public void Begin()
    {
        _given.Clear();
        Asked = 0;
    }
}
