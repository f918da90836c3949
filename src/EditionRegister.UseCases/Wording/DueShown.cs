using EditionRegister.Domain.Chains;
using EditionRegister.UseCases.Moves;

namespace EditionRegister.UseCases.Wording;

/// <summary>What is due, as a table and in one line, alike for commands and rooms.</summary>
public static class DueShown
{
    public static IReadOnlyList<ShownColumn> Columns { get; } = [new("until"), new("is it over"), new("what"), new("with or for"), new("number"), new("title"), new("code")];

    public static IReadOnlyList<string> Row(DueSheet due) =>
    [
        due.Until.ToString(),
        due.HasPassed ? "over" : "to come",
        due.What,
        PersonOf(due) ?? "",
        due.Work.NumberOf(due.Sheet),
        due.Work.ShownTitle,
        due.Sheet.ShownCode,
    ];

    public static string? PersonOf(DueSheet due) => due.Person is { } person ? WhereInWords.PersonNamed(person, due.Work.Book) : null;

    /// <summary>How many are over, and how many to come within which days.</summary>
    public static string InShort(DueListed listed)
    {
        var over = listed.Sheets.Count(due => due.HasPassed);
        var day = listed.On.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

        return listed.Sheets.Count == 0
            ? $"Nothing is due on {day} or within {Counted.Of(listed.Days, "day")} after it."
            : $"{Counted.Sheets(over)} over on {day}, {Counted.Figure(listed.Sheets.Count - over)} to come within {Counted.Of(listed.Days, "day")}.";
    }
}
