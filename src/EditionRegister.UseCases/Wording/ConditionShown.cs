using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Wording;

/// <summary>Condition reports as lists, pages and papers have them.</summary>
public static class ConditionShown
{
    /// <summary>Every report of a sheet, in the order in which they were written.</summary>
    public static ShownTable Reports(Work work, Impression sheet)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(sheet);

        return new ShownTable(
            "Condition reports:",
            [new("no.", IsRight: true), new("when"), new("occasion"), new("by"), new("what was seen")],
            [.. sheet.ConditionReports.Select(report => (string[])[Counted.Figure(report.Ordinal), report.Examined.ToString(), Called.Plain(report.Occasion), By(work.Book, report), Seen(work, report)])]);
    }

    /// <summary>The remarks of one report.</summary>
    public static ShownTable Remarks(Work work, ConditionReport report)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(report);

        return new ShownTable("Remarks:", [new("no.", IsRight: true), new("what"), new("where on the sheet"), new("note"), new("picture", IsRight: true)],
            [.. report.Remarks.Select(remark => (string[])[Counted.Figure(remark.Ordinal), work.OwnWords.NameOfTerm(remark.Term), remark.Position ?? "", remark.Note ?? "", remark.Picture is { } picture ? Counted.Figure(picture) : ""])]);
    }

    public static IReadOnlyList<(string Label, string? Value)> Facts(Work work, ConditionReport report)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(report);

        return
        [
            ("Report", Counted.Figure(report.Ordinal)),
            ("Occasion", Called.Plain(report.Occasion)),
            ("Examined", report.Examined.ToString()),
            ("By", report.Examiner is null ? "nobody said" : By(work.Book, report)),
            ("In short", report.Summary),
        ];
    }

    /// <summary>Against how it went out, for a report of coming back; null for any other.</summary>
    public static string? Compared(Work work, Impression sheet, ConditionReport report)
    {
        ArgumentNullException.ThrowIfNull(report);

        if (report.Occasion != ConditionOccasion.ComingBack)
        {
            return null;
        }

        var compared = ConditionComparison.Of(sheet, report);

        return compared.Out is not { } before ? "Nobody examined it when it went out, so it cannot be told what is new."
            : compared.New.Count == 0 ? $"Nothing is new since it went out (report {Counted.Figure(before.Ordinal)}, {before.Examined})."
            : $"New since it went out (report {Counted.Figure(before.Ordinal)}, {before.Examined}): {string.Join("; ", compared.New.Select(remark => Remark(work, remark)))}.";
    }

    /// <summary>handling crease, upper left: soft.</summary>
    public static string Remark(Work work, ConditionRemark remark)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(remark);

        return $"{work.OwnWords.NameOfTerm(remark.Term)}{(remark.Position is { } position ? $", {position}" : "")}{(remark.Note is { } note ? $": {note}" : "")}";
    }

    private static string By(AddressBook book, ConditionReport report) => report.Examiner is { } who ? book.NameOf(who) : "";

    private static string Seen(Work work, ConditionReport report) =>
        string.Join("; ", new[] { report.Summary }.OfType<string>().Concat(report.Remarks.Select(remark => Remark(work, remark))));
}
