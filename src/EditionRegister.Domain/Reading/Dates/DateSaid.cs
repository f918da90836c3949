namespace EditionRegister.Domain.Reading.Dates;

/// <summary>A date or a span as a text says it, in the terms of EDTF; its first and last year follow from that form alone, by <see cref="DateConventions"/>.</summary>
/// <param name="From">The date, or where the span begins; null where that is open.</param>
/// <param name="To">The date, or where the span ends; null where that is open.</param>
/// <param name="IsSpan">From one to another, and not one date.</param>
/// <param name="Next">The token after it.</param>
internal readonly record struct DateSaid(Moment? From, Moment? To, bool IsSpan, int Next)
{
    /// <summary>What of it was taken without being sure, or null.</summary>
    public string? Doubt { get; init; }

    /// <summary>The year whose last figures may be all that is said of the next: the 07 of 1903-07.</summary>
    public int? Abbreviated { get; init; }

    public bool IsOpen => IsSpan && (From is null || To is null);

    public string Edtf => IsSpan ? $"{From?.Edtf ?? ".."}/{To?.Edtf ?? ".."}" : From?.Edtf ?? "XXXX";

    public int? Earliest => IsSpan
        ? From?.First ?? (To is { } to ? Years.Shifted(to.Last, -DateConventions.OpenYears) : null)
        : From is { } date ? Years.Shifted(date.First, -Widening(date)) : null;

    public int? Latest => IsSpan
        ? To?.Last ?? (From is { } from ? Years.Shifted(from.First, DateConventions.OpenYears) : null)
        : From is { } date ? Years.Shifted(date.Last, Widening(date)) : null;

    public static DateSaid One(Moment moment, int next) => new(moment, moment, IsSpan: false, next);

    /// <summary>From a moment to another; null is an open end.</summary>
    public static DateSaid Span(Moment? from, Moment? to, int next) => new(from?.Beginning, to?.Ending, IsSpan: true, next);

    /// <summary>Of an EDTF text that is known to be well formed.</summary>
    public static DateSaid OfEdtf(string text) => text.Split('/') is [var from, var to]
        ? new DateSaid(MomentReader.Read(from), MomentReader.Read(to), IsSpan: true, Next: 0)
        : MomentReader.Read(text.Split('T')[0]) is { } moment ? One(moment, 0)
        : default;

    public DateSaid About() => this with { From = Marked(From, about: true), To = Marked(To, about: true) };

    public DateSaid Doubted() => this with { From = Marked(From, about: false), To = Marked(To, about: false) };

    private static Moment? Marked(Moment? moment, bool about) =>
        moment is not { } date ? null : about ? date with { IsAbout = true } : date with { IsDoubted = true };

    // A span, a decade, a month says by itself how wide it is.
    private static int Widening(Moment date) => date is { IsAbout: true, Kind: MomentKind.Year } ? DateConventions.AboutYears : 0;
}
