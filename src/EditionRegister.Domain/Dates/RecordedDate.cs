using System.Globalization;
using EditionRegister.Domain.Reading.Dates;

namespace EditionRegister.Domain.Dates;

/// <summary>A date as the register keeps it: the text as written, and the earliest and latest day it can mean (null where unbounded or not read).</summary>
public sealed record RecordedDate(string? Text, string? EarliestText, string? LatestText)
{
    /// <summary>Shown next to every field and in every message that asks for a date.</summary>
    public const string Form = "2026, 2026-03, 2026-03-01, c. 2026, spring 2026 or 2024 to 2026";

    public static RecordedDate None { get; } = new(null, null, null);

    /// <summary>What was read of the text, in EDTF; null where the text is EDTF itself, or was not read.</summary>
    public string? ReadAs { get; init; }

    /// <summary>How the words of the text were read, for a person to see: "about 1926: 1921 to 1931"; null where there was nothing to read into it.</summary>
    public string? InOtherWords => Text is { } text && DateReader.Read(text) is { } read && (ReadAs is not null || read.Doubt is not null) ? ReadDateInWords.Of(read, text) : null;

    public bool IsKnown => Text is not null;

    public DateOnly? Earliest => IsoDay.Read(EarliestText);

    public DateOnly? Latest => IsoDay.Read(LatestText);

    public static RecordedDate On(DateOnly day) => Of(Iso(day), day, day);

    public static RecordedDate Of(string text, DateOnly? earliest, DateOnly? latest) =>
        new(text, earliest is { } from ? Iso(from) : null, latest is { } to ? Iso(to) : null);

    /// <summary>A date in EDTF or in words, or the text as written without bounds where it is something else.</summary>
    public static RecordedDate Read(string? text) => TryRead(text, out var read) ? read : string.IsNullOrWhiteSpace(text) ? None : new RecordedDate(text.Trim(), null, null);

    /// <summary>A date in EDTF, or in words that can be read as one. EDTF goes first: 2011-12 is a month in a field of the register.</summary>
    public static bool TryRead(string? text, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out RecordedDate? read)
    {
        var written = text?.Trim() ?? "";

        // About so and so is as wide in EDTF as in words.
        read = Edtf.TryParse(written, out var edtf) && !written.AsSpan().ContainsAny('~', '%') ? Of(edtf.Text, edtf.Earliest, edtf.Latest)
            : DateReader.Read(written) is { } words && !IsSlip(words) ? OfWords(written, words)
            : null;

        return read is not null;
    }

    /// <summary>Why a text is not taken for a date, in a sentence; null where nothing in it looks like one.</summary>
    public static string? WhyNot(string? text) => DateReader.Read(text) switch
    {
        { Doubt: DateDoubts.NoSuchDay } => "There is no such day.",
        { Doubt: DateDoubts.NoCentury } => DateUnread.ShortYear,
        _ => DateUnread.Why(text),
    };

    /// <summary>Sure only when both bounds are known; two dates that may overlap are no conflict.</summary>
    public bool SurelyBefore(RecordedDate other) => Latest is { } latest && other.Earliest is { } earliest && latest < earliest;

    public override string ToString() => Text ?? "date not known";

    // A catalogue's slip is read as far as it goes; somebody who types is asked, since a refusal may rest on the day.
    private static bool IsSlip(ReadDate words) => words.Doubt is DateDoubts.NoSuchDay or DateDoubts.NoCentury;

    private static RecordedDate OfWords(string written, ReadDate words) =>
        Of(written, words.EarliestDay, words.LatestDay) with { ReadAs = words.Edtf == written ? null : words.Edtf };

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
