namespace EditionRegister.Domain.Reading.Dates;

/// <summary>How a date was read, in short for a person who is typing it: "about 1926: 1921 to 1931", "1935; printed 1977", "no date".</summary>
public static class ReadDateInWords
{
    /// <summary>A longer text is not said again before its reading.</summary>
    private const int LongestSaidAgain = 40;
    private const int MostBeside = 5;

    /// <param name="read">What was read.</param>
    /// <param name="written">The text it was read from, which is said again where something was taken without being sure.</param>
    public static string Of(ReadDate read, string written)
    {
        var main = read.Edtf is not { } edtf ? "no date of its own" : WithWord(read.Word, read.Doubt is null ? Date(edtf, ": ") : Doubted(edtf));
        var start = read.Doubt is not null && written.Trim() is { Length: <= LongestSaidAgain } said ? $"{said}: " : "";

        return start + string.Join("; ", [main, .. read.Doubt is { } doubt ? [doubt] : Array.Empty<string>(), .. Beside(read.Others)]);
    }

    private static IEnumerable<string> Beside(IReadOnlyList<DatedEvent> others) =>
        others.Take(MostBeside).Select(Beside).Concat(others.Count > MostBeside ? [$"and {others.Count - MostBeside} more"] : []);

    private static string Beside(DatedEvent other) => WithWord(other.Word, other.Edtf is { } edtf ? Date(edtf, ": ") : other.When ?? "");

    private static string WithWord(string? word, string date) => word is null ? date : $"{word} {date}".TrimEnd();

    private static string Doubted(string edtf) => edtf.Length == 4 && edtf.All(char.IsAsciiDigit) ? $"the year {edtf}" : Date(edtf, ", ");

    private static string Date(string edtf, string before)
    {
        var date = DateSaid.OfEdtf(edtf);
        var words = date is { IsSpan: false, From: null } && edtf != "XXXX" ? edtf : MomentInWords.Of(date);

        return MomentInWords.Bounds(date) is { } bounds ? words + before + bounds : words;
    }
}
