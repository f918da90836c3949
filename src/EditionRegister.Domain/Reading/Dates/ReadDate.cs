using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>A date read from free text: in EDTF, with the first and last year it can mean by <see cref="DateConventions"/>, and what is said beside it.</summary>
public sealed record ReadDate
{
    private ReadDate()
    {
    }

    /// <summary>The Extended Date/Time Format, level 0 or 1; XXXX where the text says that there is no date; null where it has none of its own, only of an original.</summary>
    public required string? Edtf { get; init; }

    /// <summary>The first year it can mean; null where nobody can say. Negative before our era.</summary>
    public required int? Earliest { get; init; }

    /// <summary>The last year it can mean; null where nobody can say.</summary>
    public required int? Latest { get; init; }

    /// <summary>What happened then, where the text says it: published 1893. Null for the date of the thing itself.</summary>
    public string? Word { get; init; }

    /// <summary>What else the text dates, in its order: a negative before, a printing later, an original.</summary>
    public IReadOnlyList<DatedEvent> Others { get; init; } = [];

    /// <summary>What was taken without being sure, in words; null where nothing was.</summary>
    public string? Doubt { get; init; }

    /// <summary>The text says that there is no date.</summary>
    public bool IsUndated { get; init; }

    /// <summary>The first day; null where that is open, not known, or outside the years 1 to 9999.</summary>
    public DateOnly? EarliestDay => IsOpen(first: true) ? null : Day(Exact?.Earliest, Earliest, 1, 1);

    /// <summary>The last day; null where that is open, not known, or outside the years 1 to 9999.</summary>
    public DateOnly? LatestDay => IsOpen(first: false) ? null : Day(Exact?.Latest, Latest, 12, 31);

    /// <summary>From the earliest to the latest of everything said, the date itself and all beside it. What was printed "before 1962" was not printed before the image.</summary>
    public YearSpan Whole => new(
        Others.Where(one => Earliest is null || one.Edtf?.StartsWith("..", StringComparison.Ordinal) != true).Select(one => one.Earliest).Append(Earliest).Min(),
        Others.Select(one => one.Latest).Append(Latest).Max());

    /// <summary>As the register keeps it, with the text as written.</summary>
    public RecordedDate Recorded(string written) => RecordedDate.Of(written, EarliestDay, LatestDay);

    internal static ReadDate Of(string? word, DateSaid date, IReadOnlyList<DatedEvent> others) =>
        new() { Edtf = date.Edtf, Earliest = date.Earliest, Latest = date.Latest, Word = word, Others = others, Doubt = date.Doubt };

    /// <summary>Of a text that is EDTF, which stays as it is written.</summary>
    internal static ReadDate OfEdtf(string edtf)
    {
        var date = DateSaid.OfEdtf(edtf);

        return new() { Edtf = edtf, Earliest = date.Earliest, Latest = date.Latest, IsUndated = edtf == "XXXX" };
    }

    internal static ReadDate Undated(IReadOnlyList<DatedEvent> others) => new() { Edtf = "XXXX", Earliest = null, Latest = null, Others = others, IsUndated = true };

    internal static ReadDate WithoutItsOwn(IReadOnlyList<DatedEvent> others) => new() { Edtf = null, Earliest = null, Latest = null, Others = others };

    private Edtf? Exact => Domain.Dates.Edtf.TryParse(Edtf, out var read) ? read : null;

    private bool IsOpen(bool first) => Edtf?.Split('/') is [var from, var to] && (first ? from : to) is ".." or "";

    // A day or a month is finer than the years; c. 1926 is wider than its form.
    private static DateOnly? Day(DateOnly? exact, int? year, int month, int day) =>
        exact is { } known && known.Year == year ? known : year is >= 1 and <= 9999 and { } within ? new DateOnly(within, month, day) : null;
}
