using System.Text;

namespace EditionRegister.Domain.Numbers;

internal static class RomanNumeral
{
    private static readonly (int Value, string Sign)[] Signs =
    [
        (1000, "M"), (900, "CM"), (500, "D"), (400, "CD"), (100, "C"), (90, "XC"),
        (50, "L"), (40, "XL"), (10, "X"), (9, "IX"), (5, "V"), (4, "IV"), (1, "I"),
    ];

    public static string Write(int number)
    {
        StringBuilder text = new();

        foreach (var (value, sign) in Signs)
        {
            for (; number >= value; number -= value)
            {
                text.Append(sign);
            }
        }

        return text.ToString();
    }

    /// <summary>Canonical numerals only: what would not be written so is not read.</summary>
    public static int? Read(string text)
    {
        if (LetterNumeral.InCapitals(text) is not { Length: <= 15 } capitals)
        {
            return null;
        }

        var (number, at) = (0, 0);

        foreach (var (value, sign) in Signs)
        {
            for (; at < capitals.Length && capitals.AsSpan(at).StartsWith(sign, StringComparison.Ordinal); at += sign.Length)
            {
                number += value;
            }
        }

        return at == capitals.Length && number is > 0 and < 4_000 && Write(number) == capitals ? number : null;
    }
}
