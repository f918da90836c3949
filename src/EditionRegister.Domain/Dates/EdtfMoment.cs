using System.Text.RegularExpressions;

namespace EditionRegister.Domain.Dates;

/// <summary>A day with a time of day, level 0. The time is kept in the text and does not narrow the day.</summary>
internal static partial class EdtfMoment
{
    private const int DayLength = 10;

    public static bool TryRead(string text, out DateSpan span)
    {
        span = default;

        return Pattern().IsMatch(text) && EdtfDate.TryRead(text[..DayLength], out span);
    }

    [GeneratedRegex(
        @"^[0-9]{4}-[0-9]{2}-[0-9]{2}T(?:[01][0-9]|2[0-3]):[0-5][0-9]:[0-5][0-9](?:Z|[+-](?:0[0-9]|1[0-4])(?::[0-5][0-9])?)?\z",
        RegexOptions.CultureInvariant)]
    private static partial Regex Pattern();
}
