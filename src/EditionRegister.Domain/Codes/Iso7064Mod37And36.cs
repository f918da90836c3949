namespace EditionRegister.Domain.Codes;

/// <summary>The check character of ISO/IEC 7064 MOD 37,36: one of 0-9 and A-Z, behind a text of the same characters.</summary>
public static class Iso7064Mod37And36
{
    private const string Alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private const int Modulus = 36;

    /// <summary>The character that belongs behind <paramref name="body"/>.</summary>
    /// <exception cref="ArgumentException">The body holds something else than 0-9 and A-Z.</exception>
    public static char CheckCharacter(ReadOnlySpan<char> body)
    {
        var product = Modulus;

        foreach (var character in body)
        {
            var value = Alphabet.IndexOf(character, StringComparison.Ordinal);

            if (value < 0)
            {
                throw new ArgumentException("Only 0-9 and A-Z can carry a check character.", nameof(body));
            }

            product = Next(product, value);
        }

        return Alphabet[(Modulus + 1 - product) % Modulus];
    }

    /// <summary>Whether the last character is the check character of all before it. False for anything but 0-9 and A-Z.</summary>
    public static bool IsValid(ReadOnlySpan<char> text) =>
        text.Length >= 2
        && IsKnown(text)
        && CheckCharacter(text[..^1]) == text[^1];

    private static bool IsKnown(ReadOnlySpan<char> text)
    {
        foreach (var character in text)
        {
            if (!char.IsAsciiDigit(character) && !char.IsAsciiLetterUpper(character))
            {
                return false;
            }
        }

        return true;
    }

    private static int Next(int product, int value)
    {
        var sum = (product + value) % Modulus;

        return (sum == 0 ? Modulus : sum) * 2 % (Modulus + 1);
    }
}
