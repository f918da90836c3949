namespace EditionRegister.Domain.Numbers;

/// <summary>Reads what is pencilled on a sheet: a plain number with its mark, and nothing that needs a guess.</summary>
internal static class PencilledText
{
    public static PencilReading Read(string? text, Notation? expected, IReadOnlyList<NumberingKind> own, out PencilledNumber? value)
    {
        value = null;
        var plain = Plain(text);

        if (plain.Length == 0)
        {
            return PencilReading.Empty;
        }

        var (kind, rest) = PencilledMark.Split(plain, own);

        if (rest.Length == 0)
        {
            value = new PencilledNumber(kind, Notation.None);
            return PencilReading.Read;
        }

        return rest.Split('/') switch
        {
            [var alone] => Alone(kind, alone, expected, out value),
            [var number, var of] => Of(kind, number, of, expected, out value),
            _ => PencilReading.NotPlain,
        };
    }

    // The slash of a fraction, the division slash and the no-break space are what programs for writing text make of ours.
    private static string Plain(string? text) =>
        string.Join('/', (text ?? "").Replace('\u2044', '/').Replace('\u2215', '/').Replace('\u00A0', ' ').Trim().Split('/').Select(part => part.Trim(' ')));

    private static PencilReading Of(NumberingKind kind, string number, string of, Notation? expected, out PencilledNumber? value)
    {
        value = null;

        if (ArabicNumeral.IsDigits(number) && ArabicNumeral.IsDigits(of))
        {
            return InRange(kind, Notation.Arabic, number, of, out value) ? PencilReading.Read : PencilReading.OutOfRange;
        }

        // Lettered sheets carry no size by custom, and A/C or C/O are other things: read only where letters are expected.
        var notation = expected == Notation.Letters ? Notation.Letters : Notation.Roman;

        if (!notation.TryRead(number, out _) || !notation.TryRead(of, out _))
        {
            return PencilReading.NotPlain;
        }

        return InRange(kind, notation, number, of, out value) ? PencilReading.Read : PencilReading.OutOfRange;
    }

    private static bool InRange(NumberingKind kind, Notation notation, string number, string of, out PencilledNumber? value)
    {
        value = notation.TryRead(number, out var n) && notation.TryRead(of, out var size) && n <= size
            ? new PencilledNumber(kind, notation, n, size)
            : null;

        return value is not null;
    }

    private static PencilReading Alone(NumberingKind kind, string text, Notation? expected, out PencilledNumber? value)
    {
        value = null;

        if (ArabicNumeral.IsDigits(text) && !Notation.Arabic.TryRead(text, out _))
        {
            return PencilReading.OutOfRange;
        }

        var notation = expected?.TryRead(text, out _) is true ? expected : NotationOf(text, marked: kind != NumberingKind.Numbered);

        if (notation?.TryRead(text, out var number) is not true)
        {
            return PencilReading.NotPlain;
        }

        value = new PencilledNumber(kind, notation, number);

        return PencilReading.Read;
    }

    /// <summary>
    /// The notation of a number that stands alone: I, V and X begin a roman count, any other single letter is a letter.
    /// Longer texts of other letters are words or initials, a number from 1400 to 2099 may be a year, and small letters need a mark.
    /// </summary>
    private static Notation? NotationOf(string text, bool marked) =>
        ArabicNumeral.IsDigits(text) ? LooksLikeAYear(text) ? null : Notation.Arabic
        : LetterNumeral.InCapitals(text) is not { } capitals || (capitals != text && !marked) ? null
        : capitals.All(c => c is 'I' or 'V' or 'X') ? Notation.Roman
        : capitals.Length == 1 ? Notation.Letters
        : null;

    private static bool LooksLikeAYear(string digits) => Notation.Arabic.TryRead(digits, out var year) && year is >= 1400 and < 2100;
}
