namespace EditionRegister.Domain.Reading.Inscriptions.Copies;

/// <summary>Figures and words of dates, so far as they can be taken for a copy's number.</summary>
internal static class DateParts
{
    /// <summary>Whether a word is a month, or begins one and is abbreviated.</summary>
    public static bool IsMonth(ReadOnlySpan<char> word) => word is
        "january" or "february" or "march" or "april" or "may" or "june" or "july" or "august" or "september" or "october" or "november" or "december"
        or "jan" or "feb" or "mar" or "apr" or "jun" or "jul" or "aug" or "sep" or "sept" or "oct" or "nov" or "dec"
        or "janvier" or "fevrier" or "mars" or "avril" or "mai" or "juin" or "juillet" or "aout" or "septembre" or "octobre" or "novembre" or "decembre"
        or "januar" or "februar" or "marz" or "juni" or "juli" or "oktober" or "dezember" or "maart" or "mei"
        or "gennaio" or "febbraio" or "marzo" or "aprile" or "maggio" or "giugno" or "luglio" or "agosto" or "settembre" or "ottobre" or "dicembre"
        or "enero" or "febrero" or "abril" or "mayo" or "junio" or "julio" or "septiembre" or "octubre" or "noviembre" or "diciembre";

    /// <summary>A year of the trade; no copy has such a number.</summary>
    public static bool IsYear(int value) => value is >= 1400 and < 2100;

    /// <summary>A year somebody may have written behind a month or another year.</summary>
    public static bool IsModernYear(int value) => value is >= 1850 and < 2100;

    /// <summary>Month and day, or day and month.</summary>
    public static bool IsDay(int one, int two) => one <= 31 && two <= 31 && (one <= 12 || two <= 12);

    /// <summary>11/69: a month and the last figures of a year, as likely as a copy of an edition of an odd size.</summary>
    public static bool IsOddMonthAndYear(int one, int two) => one <= 12 && two is > 31 and < 100 && two % 5 != 0;

    /// <summary>7/26: a month and a day that would be an odd size for an edition.</summary>
    public static bool IsOddDay(int one, int two) => one <= 12 && two is 13 or 17 or 19 or 22 or 23 or 26 or 27 or 28 or 29 or 31;

    /// <summary>78/79, 1968/71, 1963/2012: a span of years.</summary>
    public static bool IsSpanOfYears(int one, int two) => (IsYear(one) && (two < 100 || IsYear(two))) || (one is > 40 and < 100 && two == one + 1 && two % 5 != 0);
}
