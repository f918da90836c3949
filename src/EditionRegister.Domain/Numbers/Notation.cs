using System.Diagnostics.CodeAnalysis;

namespace EditionRegister.Domain.Numbers;

/// <summary>How the numbers of one numbering are written: arabic, roman, letters, or not at all.</summary>
public sealed record Notation
{
    private readonly Func<int, string> _write;
    private readonly Func<string, int?> _read;

    private Notation(string word, int largest, Func<int, string> write, Func<string, int?> read)
    {
        Word = word;
        Largest = largest;
        _write = write;
        _read = read;
    }

    /// <summary>1, 2, 3. Six digits at most, so that an inventory number is not taken for one.</summary>
    public static Notation Arabic { get; } = new("arabic", 999_999, ArabicNumeral.Write, ArabicNumeral.Read);

    /// <summary>I, II, III: from 1 to 3,999.</summary>
    public static Notation Roman { get; } = new("roman", 3_999, RomanNumeral.Write, RomanNumeral.Read);

    /// <summary>A to Z, then AA, AB like the columns of a spreadsheet, to ZZZ.</summary>
    public static Notation Letters { get; } = new("letters", 18_278, LetterNumeral.Write, LetterNumeral.Read);

    /// <summary>The sheets of the numbering carry its mark and no number.</summary>
    public static Notation None { get; } = new("none", 0, _ => "", _ => null);

    public static IReadOnlyList<Notation> All { get; } = [Arabic, Roman, Letters, None];

    /// <summary>Permanent: what the register, commands and CSV call it.</summary>
    public string Word { get; }

    /// <summary>The largest number it can write; 0 where it writes none.</summary>
    public int Largest { get; }

    public static bool TryFind(string? word, [NotNullWhen(true)] out Notation? value)
    {
        value = All.FirstOrDefault(notation => string.Equals(notation.Word, word, StringComparison.Ordinal));

        return value is not null;
    }

    /// <summary>The number as pencilled; empty where none is written.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 1, or above what this notation can write.</exception>
    public string Write(int number)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);

        if (this == None)
        {
            return "";
        }

        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, Largest);

        return _write(number);
    }

    /// <summary>Reads one number from 1 upwards, in capitals or in small letters throughout; a numeral oddly formed (IIII) is not read.</summary>
    public bool TryRead(string? text, out int number)
    {
        number = string.IsNullOrEmpty(text) ? 0 : _read(text) ?? 0;

        return number >= 1 && number <= Largest;
    }

    public bool Equals(Notation? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Word);

    public override string ToString() => Word;
}
