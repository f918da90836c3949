using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Why a text was not read as a date, where that can be known.</summary>
public static class DateUnread
{
    public const string OtherEra = "A year of another era is not read; write the year of ours beside it.";
    public const string NoYear = "A day or a month without a year is not read.";
    public const string ShortYear = "A year in two figures is not read; write all four.";

    /// <summary>A sentence, or null where the text was read or nothing in it looks like a date.</summary>
    public static string? Why(string? text)
    {
        if (string.IsNullOrWhiteSpace(text) || DateReader.Read(text) is not null)
        {
            return null;
        }

        TokenText tokens = new(text);

        return Any(tokens, static (text, at) => Eras.AfterOther(text, at) is not null) ? OtherEra
            : Any(tokens, static (text, at) => MonthDay.At(text, at) is { } date && (date.Day is not null || !tokensGoOn(text, date.Next))) ? NoYear
            : Any(tokens, IsShortYear) ? ShortYear
            : null;

        static bool tokensGoOn(TokenText text, int at) => at < text.Count;
    }

    private static bool IsShortYear(TokenText text, int at) =>
        (text.IsDigits(at) && text[at].Length <= 2 && text.IsAnySign(at + 1, "/.-") && text.IsDigits(at + 2) && text[at + 2].Length == 2)
        || (text.IsSign(at, '\'') && text.IsDigits(at + 1) && text[at + 1].Length == 2);

    private static bool Any(TokenText text, Func<TokenText, int, bool> holds) => Enumerable.Range(0, text.Count).Any(at => holds(text, at));
}
