namespace EditionRegister.Domain.Reading.Papers;

/// <summary>How the words for a paper are read, for a person who typed them.</summary>
public static class PaperAsRead
{
    /// <summary>Null where the words are a name and nothing else, or there are none.</summary>
    public static string? Of(string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return null;
        }

        var words = PaperReader.Read(text).Explain();

        return words.Length == 0 || words == text.Trim() ? null : words;
    }
}
