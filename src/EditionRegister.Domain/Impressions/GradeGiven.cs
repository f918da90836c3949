using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Domain.Impressions;

/// <summary>How sheets looked to whoever graded them. What is not marked stays as it was; a mark given again replaces the one before.</summary>
public sealed record GradeGiven
{
    /// <summary>From 1 to 5 each.</summary>
    public IReadOnlyDictionary<GradeAspect, int> Marks { get; init; } = new Dictionary<GradeAspect, int>();

    /// <summary>Nobody looked after all.</summary>
    public IReadOnlyList<GradeAspect> NotLooked { get; init; } = [];

    /// <summary>guide-sheet, bon-a-tirer or unknown; null leaves it.</summary>
    public string? Against { get; init; }

    public string? Note { get; init; }

    /// <summary>Null is the day it is recorded.</summary>
    public RecordedDate? Graded { get; init; }

    /// <exception cref="RefusedException">grade-empty, grade-impossible or grade-marked-and-not.</exception>
    public void Record(IReadOnlyList<Impression> sheets, RecordedDate today, Deed deed)
    {
        if (Marks.Count == 0 && NotLooked.Count == 0 && (Against ?? Note) is null)
        {
            throw GradingRefusals.Nothing();
        }

        if (Marks.FirstOrDefault(mark => mark.Value is < GradeAspect.Poorest or > GradeAspect.Best) is { Key: { } aspect } wrong)
        {
            throw GradingRefusals.NoMark(aspect, wrong.Value);
        }

        if (NotLooked.FirstOrDefault(Marks.ContainsKey) is { } both)
        {
            throw GradingRefusals.MarkedAndNot(both);
        }

        foreach (var sheet in sheets)
        {
            Record(sheet, today, deed);
        }
    }

    private void Record(Impression sheet, RecordedDate today, Deed deed)
    {
        var id = sheet.Grade?.Id ?? deed.NewId("grade");
        deed.Set("grade", id, ("impression", sheet.Id), ("against", Against ?? sheet.Grade?.Against ?? "unknown"));
        deed.SetDate("grade", id, "graded", Graded ?? today);

        foreach (var (aspect, mark) in Marks)
        {
            deed.Set("grade", id, (aspect.Word, mark));
        }

        foreach (var aspect in NotLooked)
        {
            deed.Set("grade", id, (aspect.Word, FactValue.Null));
        }

        if (Note is not null)
        {
            deed.Set("grade", id, ("note", Note));
        }
    }
}
