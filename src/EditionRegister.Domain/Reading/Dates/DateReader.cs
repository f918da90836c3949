using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Reads dates as catalogues and pencils write them; what it cannot read it leaves, and it never guesses a year.</summary>
public static class DateReader
{
    /// <summary>The date, or null where none was read.</summary>
    public static ReadDate? Read(string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return null;
        }

        if (Edtf.TryParse(text.Trim(), out var edtf) && !LooksLikeAShortSpan(text.Trim()))
        {
            return new ReadDate(edtf.Text, edtf.Earliest?.Year, edtf.Latest?.Year, Printed: null, IsUndated: false);
        }

        TokenText tokens = new(text);
        DatesMet met = new(tokens);

        return met.Answer() ?? (IsUndated(tokens) ? new ReadDate("XXXX", null, null, null, IsUndated: true) : null);
    }

    // 1904-05 is a month in EDTF and a span of two years to a cataloguer; which, nobody can say: read as the span where it can be one.
    private static bool LooksLikeAShortSpan(string text) =>
        text.Length == 7 && text[4] == '-' && int.TryParse(text[2..4], out var from) && int.TryParse(text[5..], out var to) && to > from;

    private static bool IsUndated(TokenText text) =>
        (text.Word(0) is "n" or "s" && text.IsSign(1, '.') && text.Word(2) is "d" or "j")
        || text.Word(0) is "nd" or "undated" or "unknown" or "undatiert"
        || (text.Word(0) is "o" && text.Word(2) is "j")
        || (text.Word(0) is "no" or "without" or "sans" or "ohne" or "senza" or "sin" && text.Word(1) is "date" or "datum" or "data" or "fecha" or "jahr")
        || (text.Word(0) is "date" && text.Word(1) is "unknown" or "not");
}
