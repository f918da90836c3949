using System.Globalization;
using EditionRegister.Domain.Reading.Dates;

namespace EditionRegister.Domain.Reading.Search;

/// <summary>A date in the words of a search: c. 2019, 1960s, spring 2024, before 1950. By the same conventions as a date of the register.</summary>
internal static class DatesRead
{
    private const int FirstBareYear = 1000;
    private const string Open = "..";

    // Words of time that the reader of dates passes over, or that only lead in.
    private static readonly HashSet<string> Before = new(StringComparer.OrdinalIgnoreCase)
    {
        "from", "in", "of", "the", "dated", "during", "between", "early", "late", "mid", "end", "beginning",
    };

    public static SoughtDates? Of(IReadOnlyList<string> words) =>
        Strictly(words) is { } read && !IsSeveral(words) ? Span(string.Join(' ', words), read) : null;

    /// <summary>Whether there may be one among these words at all: asked once before every run of them is read.</summary>
    public static bool MayBeIn(string text) => DateReader.Read(text) is not null || text.Split(' ').Any(word => word.Count(char.IsAsciiDigit) >= 3);

    /// <summary>2019 2021 are two dates, and both are meant.</summary>
    private static bool IsSeveral(IReadOnlyList<string> words) =>
        Enumerable.Range(1, words.Count - 1).Any(cut => Strictly([.. words.Take(cut)]) is not null && Strictly([.. words.Skip(cut)]) is not null);

    /// <summary>Only where every word is a word of the date, and every letter and figure of a word too: B2019 is no year.</summary>
    private static ReadDate? Strictly(IReadOnlyList<string> words) =>
        words.All(DateWord.HasItsSigns) ? EveryWord.WithoutLead(words, Before).Select(Whole).FirstOrDefault(read => read is not null) : null;

    private static ReadDate? Whole(IReadOnlyList<string> words) =>
        Read(string.Join(' ', words)) is { } read && Said(read) is { } said
            && EveryWord.Counts(words, said, text => Said(Read(text))) && Enumerable.Range(0, words.Count).All(at => DateWord.CountsWhole(words, at, said, text => Said(Read(text)))) ? read : null;

    /// <summary>All that a text says of dates, to be compared: what it leaves unread is not of it.</summary>
    private static string? Said(ReadDate? read) => read is null ? null
        : string.Create(CultureInfo.InvariantCulture, $"{read.Edtf} {read.Earliest} {read.Latest} {read.Word} {string.Join(' ', read.Others.Select(other => $"{other.Word} {other.Edtf} {other.When}"))}");

    private static ReadDate? Read(string text) =>
        DateReader.Read(text) is { IsUndated: false } read && read.Others.All(other => other.Earliest is not null) && (read.Earliest ?? read.Latest) is >= 1 and <= 9999 && !IsSmallFigure(text) ? read : null;

    // 0012 is a number on a shelf.
    private static bool IsSmallFigure(string text) =>
        text.Length <= 4 && text.All(char.IsAsciiDigit) && text.Aggregate(0, (figure, digit) => (figure * 10) + (digit - '0')) < FirstBareYear;

    /// <summary>Before and after are open here: who looks for what is before 1950 does not mean the last years of it.</summary>
    private static SoughtDates? Span(string text, ReadDate read)
    {
        var recorded = read.Recorded(text);
        SoughtDates span = new(IsOpen(read, first: true) ? null : recorded.Earliest, IsOpen(read, first: false) ? null : recorded.Latest);

        return (span.Earliest ?? span.Latest) is null ? null : span;
    }

    private static bool IsOpen(ReadDate read, bool first) =>
        read.Edtf is { } edtf && edtf.Contains('/', StringComparison.Ordinal) && (first ? edtf.Split('/')[0] : edtf.Split('/')[^1]) is Open or "";
}
