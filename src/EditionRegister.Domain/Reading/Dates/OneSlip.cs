namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Whether a long word is another but for one slip of the pen: a letter too many, too few, wrong, or two that changed places.</summary>
internal static class OneSlip
{
    /// <summary>Shorter words are too near to one another.</summary>
    public const int Shortest = 7;

    public static bool IsOf(ReadOnlySpan<char> word, string name)
    {
        if (name.Length < Shortest || Math.Abs(word.Length - name.Length) > 1 || word[0] != name[0])
        {
            return false;
        }

        var same = word.CommonPrefixLength(name);
        var rest = word[same..];
        var named = name.AsSpan(same);

        return word.Length > name.Length ? rest[1..].SequenceEqual(named)
            : word.Length < name.Length ? rest.SequenceEqual(named[1..])
            : rest.Length == 0 || rest[1..].SequenceEqual(named[1..])
            || (rest.Length > 1 && rest[0] == named[1] && rest[1] == named[0] && rest[2..].SequenceEqual(named[2..]));
    }
}
