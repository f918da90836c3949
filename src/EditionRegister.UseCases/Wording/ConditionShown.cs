using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Wording;

/// <summary>Condition reports as lists, pages and papers have them.</summary>
public static class ConditionShown
{
    /// <summary>Every report of a sheet, in the order in which they were written.</summary>
    public static ShownTable Reports(Work work, Impression sheet, IReadOnlyList<ConditionTerm> terms)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(sheet);

        return new ShownTable(
            "Condition reports:",
            [new("no.", IsRight: true), new("when"), new("occasion"), new("by"), new("what was seen")],
            [.. sheet.ConditionReports.Select(report => (string[])[Counted.Figure(report.Ordinal), report.Examined.ToString(), Called.Plain(report.Occasion), By(work.Book, report), Seen(report, terms)])]);
    }

    /// <summary>The remarks of one report.</summary>
    public static ShownTable Remarks(ConditionReport report, IReadOnlyList<ConditionTerm> terms)
    {
        ArgumentNullException.ThrowIfNull(report);

        return new ShownTable("Remarks:", [new("no.", IsRight: true), new("what"), new("where on the sheet"), new("note"), new("picture", IsRight: true)],
            [.. report.Remarks.Select(remark => (string[])[Counted.Figure(remark.Ordinal), Name(remark.Term, terms), remark.Position ?? "", remark.Note ?? "", remark.Picture is { } picture ? Counted.Figure(picture) : ""])]);
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
    public static string? Compared(Impression sheet, ConditionReport report, IReadOnlyList<ConditionTerm> terms)
    {
        ArgumentNullException.ThrowIfNull(report);

        if (report.Occasion != ConditionOccasion.ComingBack)
        {
            return null;
        }

        var compared = ConditionComparison.Of(sheet, report);

        return compared.Out is not { } before ? "Nobody examined it when it went out, so it cannot be told what is new."
            : compared.New.Count == 0 ? $"Nothing is new since it went out (report {Counted.Figure(before.Ordinal)}, {before.Examined})."
            : $"New since it went out (report {Counted.Figure(before.Ordinal)}, {before.Examined}): {string.Join("; ", compared.New.Select(remark => Remark(remark, terms)))}.";
    }

    /// <summary>handling crease, upper left: soft.</summary>
    public static string Remark(ConditionRemark remark, IReadOnlyList<ConditionTerm> terms)
    {
        ArgumentNullException.ThrowIfNull(remark);

        return $"{Name(remark.Term, terms)}{(remark.Position is { } position ? $", {position}" : "")}{(remark.Note is { } note ? $": {note}" : "")}";
    }

    public static string Name(string term, IReadOnlyList<ConditionTerm> terms) => terms.FirstOrDefault(one => one.Word == term)?.Name ?? Called.Plain(term);

    private static string By(AddressBook book, ConditionReport report) => report.Examiner is { } who ? book.NameOf(who) : "";

    private static string Seen(ConditionReport report, IReadOnlyList<ConditionTerm> terms) =>
        string.Join("; ", new[] { report.Summary }.OfType<string>().Concat(report.Remarks.Select(remark => Remark(remark, terms))));
}
