using System.Globalization;

namespace EditionRegister.Domain.Dates;

/// <summary>A date as the register keeps it: the text as written, and the earliest and latest day it can mean (null where unbounded or not read).</summary>
public sealed record RecordedDate(string? Text, string? EarliestText, string? LatestText)
{
    public static RecordedDate None { get; } = new(null, null, null);

    public bool IsKnown => Text is not null;

    public DateOnly? Earliest => IsoDay.Read(EarliestText);

    public DateOnly? Latest => IsoDay.Read(LatestText);

    public static RecordedDate On(DateOnly day) => Of(Iso(day), day, day);

    public static RecordedDate Of(string text, DateOnly? earliest, DateOnly? latest) =>
        new(text, earliest is { } from ? Iso(from) : null, latest is { } to ? Iso(to) : null);

    /// <summary>A date in EDTF, or the text as written without bounds where it is something else.</summary>
    public static RecordedDate Read(string? text) =>
        string.IsNullOrWhiteSpace(text) ? None
        : Edtf.TryParse(text.Trim(), out var edtf) ? Of(edtf.Text, edtf.Earliest, edtf.Latest)
        : new RecordedDate(text.Trim(), null, null);

    /// <summary>Sure only when both bounds are known; two dates that may overlap are no conflict.</summary>
    public bool SurelyBefore(RecordedDate other) => Latest is { } latest && other.Earliest is { } earliest && latest < earliest;

    public override string ToString() => Text ?? "date not known";

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
