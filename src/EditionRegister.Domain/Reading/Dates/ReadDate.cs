using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>A date read from free text: in EDTF where it has a form there, with the first and last year it can mean.</summary>
/// <param name="Edtf">The Extended Date/Time Format, level 0 or 1; null where words say less than a form of it can.</param>
/// <param name="Earliest">The first year; null where nobody can say. Negative before our era.</param>
/// <param name="Latest">The last year; null where nobody can say.</param>
/// <param name="Printed">What is said of a later printing, publication or casting beside it: the words, and its date if it has one.</param>
/// <param name="IsUndated">The text says that there is no date.</param>
public sealed record ReadDate(string? Edtf, int? Earliest, int? Latest, LaterDate? Printed, bool IsUndated)
{
    /// <summary>As the register keeps it, with the text as written; bounds by the conventions.</summary>
    public RecordedDate Recorded(string written) => new(
        written,
        Earliest is >= 1 and <= 9999 and { } from ? Day(Exact?.Earliest, from, 1, 1) : null,
        Latest is >= 1 and <= 9999 and { } to ? Day(Exact?.Latest, to, 12, 31) : null);

    // A day or a month is finer than the years the conventions speak of.
    private Edtf? Exact => Domain.Dates.Edtf.TryParse(Edtf, out var read) && !Edtf!.AsSpan().ContainsAny("~?%X") ? read : null;

    private static string Day(DateOnly? exact, int year, int month, int day) =>
        (exact is { } known && known.Year == year ? known : new DateOnly(year, month, day)).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}

/// <summary>Printed later, published 1893, cast 1928: what the sheet or the edition came to after the image.</summary>
public sealed record LaterDate(string Word, int? Earliest, int? Latest);
