namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>How the words for a technique are read, for a person who typed them.</summary>
public static class TechniqueAsRead
{
    /// <summary>Null where the words say it plainly themselves, or there are none.</summary>
    public static string? Of(string? text, IReadOnlyList<Technique>? own = null)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return null;
        }

        var read = TechniqueReader.Read(text, own);
        var words = read.Techniques.Count == 0 ? "no technique of the list, and kept as written" : read.InWords();

        return read.NotKnown() is { } left ? $"{words}; {left}" : words == text.Trim() ? null : words;
    }
}
