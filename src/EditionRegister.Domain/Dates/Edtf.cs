using System.Diagnostics.CodeAnalysis;

namespace EditionRegister.Domain.Dates;

/// <summary>
/// A date as exact as it is known, in the Extended Date/Time Format of the Library of Congress (2019), levels 0 and 1.
/// Uncertain (?), approximate (~) and both (%) are kept in the text and do not widen the bounds.
/// </summary>
public sealed record Edtf
{
    /// <summary>Shown next to every field and in every message that asks for a date.</summary>
    public const string Form = "2026, 2026-03, 2026-03-01, 2026~ (about), 202X, 2026-21 (spring) or 2024/2026";

    private Edtf(string text, DateSpan span)
    {
        Text = text;
        Span = span;
    }

    /// <summary>As written; the only thing two dates are compared by.</summary>
    public string Text { get; }

    /// <summary>Both bounds together.</summary>
    public DateSpan Span { get; }

    /// <summary>The first day it can mean; null where that is open, unknown, or outside the years 1 to 9999.</summary>
    public DateOnly? Earliest => Span.Earliest;

    /// <summary>The last day it can mean; null where that is open, unknown, or outside the years 1 to 9999.</summary>
    public DateOnly? Latest => Span.Latest;

    /// <summary>Reads one date or one interval. An interval that surely ends before it begins is not read.</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out Edtf? value)
    {
        var trimmed = (text ?? "").Trim(' ');

        value = TryReadSpan(trimmed, out var span) ? new Edtf(trimmed, span) : null;

        return value is not null;
    }

    public bool Equals(Edtf? other) => string.Equals(Text, other?.Text, StringComparison.Ordinal);

    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Text);

    public override string ToString() => Text;

    private static bool TryReadSpan(string text, out DateSpan span)
    {
        switch (text.Split('/'))
        {
            case [var date]:
                return EdtfDate.TryRead(date, out span) || EdtfMoment.TryRead(date, out span);

            case [var first, var last] when TryReadEnd(first, out var begin) && TryReadEnd(last, out var end) && !end.SurelyBefore(begin):
                span = new DateSpan(begin.Earliest, end.Latest);
                return true;

            default:
                span = default;
                return false;
        }
    }

    // Open (..) and unknown (nothing) set no bound.
    private static bool TryReadEnd(string text, out DateSpan span)
    {
        span = default;

        return text is ".." or "" || EdtfDate.TryRead(text, out span);
    }
}
