using System.Diagnostics.CodeAnalysis;

namespace EditionRegister.Domain.Codes;

/// <summary>The short code of one impression: seven drawn characters and a check character, never given to another sheet.</summary>
public sealed record RegisterCode
{
    /// <summary>Shown next to every field and in every message that asks for a code.</summary>
    public const string Form = "7KQ4-M2X3";

    /// <summary>What a code is made of: no 0, 1, I or O, which pencil and small print confuse.</summary>
    public const string Alphabet = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";

    private const int BodyLength = 7;

    private RegisterCode(string text) => Text = text;

    /// <summary>The eight characters as stored, without the hyphen.</summary>
    public string Text { get; }

    /// <summary>Draws a code that cannot be counted from outside.</summary>
    /// <param name="next">Given n, answers a random number from 0 to n - 1.</param>
    public static RegisterCode Draw(Func<int, int> next)
    {
        ArgumentNullException.ThrowIfNull(next);

        Span<char> text = stackalloc char[BodyLength + 1];

        do
        {
            for (var i = 0; i < BodyLength; i++)
            {
                text[i] = Alphabet[next(Alphabet.Length)];
            }

            text[BodyLength] = Iso7064Mod37And36.CheckCharacter(text[..BodyLength]);
        }
        while (!Alphabet.Contains(text[BodyLength], StringComparison.Ordinal));

        return new RegisterCode(new string(text));
    }

    /// <summary>Reads a code as people type it: case, spaces and hyphens do not matter, every character does.</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out RegisterCode? value)
    {
        value = Bare(text ?? "") is { } bare && Iso7064Mod37And36.IsValid(bare) ? new RegisterCode(bare) : null;

        return value is not null;
    }

    /// <summary>Eight characters that codes are made of, whether or not the last answers for the others.</summary>
    public static bool HasItsForm(string? text) => Bare(text ?? "") is not null;

    /// <summary>The eight characters without what parts them, or null where they are others, more or fewer.</summary>
    private static string? Bare(string text)
    {
        Span<char> bare = stackalloc char[BodyLength + 1];
        var length = 0;

        foreach (var c in text)
        {
            if (IsFiller(c))
            {
                continue;
            }

            if (length == bare.Length || !Alphabet.Contains(AsciiUpper(c), StringComparison.Ordinal))
            {
                return null;
            }

            bare[length++] = AsciiUpper(c);
        }

        return length == bare.Length ? new string(bare) : null;
    }

    /// <summary>As shown and printed, in two groups of four.</summary>
    public override string ToString() => $"{Text[..4]}-{Text[4..]}";

    // Programs for writing text turn the hyphen into its typographic kin on their own.
    private static bool IsFiller(char c) => c is ' ' or '\u00A0' or '\t' or '-' or '\u2010' or '\u2011' or '\u2012' or '\u2013';

    // ASCII only: no other letter may become one of ours, in any culture.
    private static char AsciiUpper(char c) => c is >= 'a' and <= 'z' ? (char)(c - 32) : c;
}
