using System.Globalization;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Reads dates as catalogues and pencils write them; what it cannot read it leaves, and it never guesses a year.</summary>
public static class DateReader
{
    /// <summary>Shown next to a field that reads free text.</summary>
    public const string Form = "1926, c. 1926, 1785–90, the 1960s, early 20th century, spring 2024, 17 February 1877, before 1645, 1950, printed 1981 or n.d.";

    /// <summary>The date, or null where none was read; <see cref="DateUnread"/> may know why.</summary>
    public static ReadDate? Read(string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return null;
        }

        if (Edtf.TryParse(text.Trim(), out var edtf))
        {
            return ReadDate.OfEdtf(edtf.Text) with { Doubt = WhereASpanIsWrittenSo(edtf.Text) };
        }

        TokenText tokens = new(text);

        return DatesMet.In(tokens) ?? (Years.Alone(tokens) is { } year ? ReadDate.Of(null, year, []) : null);
    }

    // 1904-05 is a month in EDTF, which this register writes everywhere, and two years to many a cataloguer.
    private static string? WhereASpanIsWrittenSo(string edtf) =>
        edtf is [_, _, _, _, '-', _, _] && Figure(edtf[2..4]) is { } from && Figure(edtf[5..]) is { } to and <= 12 && to > from
            ? DateDoubts.MonthOrSpan(Figure(edtf[..4])!.Value, Figure(edtf[..4])!.Value - from + to)
            : null;

    private static int? Figure(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var figure) ? figure : null;
}
