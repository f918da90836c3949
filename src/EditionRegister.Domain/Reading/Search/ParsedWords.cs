using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Reading.Search;

/// <summary>The words of a search in their order, and which of them were typed as one text. Reads them from the left, always the longest run that means something.</summary>
internal sealed class ParsedWords(OwnWords own)
{
    // "Between about 17 February 1877 and about 3 March 1879" has ten words; nobody says a number in more.
    private const int LongestRun = 10;

    // Longer texts were pasted; they are looked for as words, and reading them would hold up every key.
    private const int MostRead = 24;
    private const int LongestWord = 30;

    private readonly List<(string Text, int Phrase)> _words = [];
    private int _phrases;
    private RunRead? _runs;

    public static string[] Cut(string? text) => (text ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Words each by itself.</summary>
    public void AddEach(string? text)
    {
        foreach (var word in Cut(text))
        {
            _words.Add((word, _phrases++));
        }
    }

    /// <summary>Words that stay together where nothing is read in them.</summary>
    public void AddTogether(string? text)
    {
        _words.AddRange(Cut(text).Select(word => (word, _phrases)));
        _phrases++;
    }

    public IReadOnlyList<SoughtPart> Parts()
    {
        List<SoughtPart> parts = [];
        _runs = _words.Count is 0 or > MostRead ? null : new RunRead(string.Join(' ', _words.Select(word => word.Text)), own);

        for (var at = 0; at < _words.Count;)
        {
            var (part, next) = LongestAt(at) ?? AsItStands(at);
            parts.Add(part);
            at = next;
        }

        return parts;
    }

    private (SoughtPart Part, int Next)? LongestAt(int at)
    {
        for (var end = Math.Min(_words.Count, at + LongestRun); _runs is not null && end > at; end--)
        {
            if (IsWhole(at, end) && _runs.Of([.. _words[at..end].Select(word => word.Text)]) is { } part)
            {
                return (part, end);
            }
        }

        return null;
    }

    /// <summary>A run may join texts or lie inside one; it never takes a piece of one and more beside it.</summary>
    private bool IsWhole(int at, int end)
    {
        var inside = _words[at].Phrase == _words[end - 1].Phrase;
        var cutsFirst = at > 0 && _words[at - 1].Phrase == _words[at].Phrase;
        var cutsLast = end < _words.Count && _words[end].Phrase == _words[end - 1].Phrase;

        return (inside || (!cutsFirst && !cutsLast)) && _words.Skip(at).Take(end - at).All(word => word.Text.Length <= LongestWord);
    }

    /// <summary>To the end of the text, or to where something is read in it.</summary>
    private (SoughtPart Part, int Next) AsItStands(int at)
    {
        var end = at + 1;

        while (end < _words.Count && _words[end].Phrase == _words[at].Phrase && LongestAt(end) is null)
        {
            end++;
        }

        var text = string.Join(' ', _words[at..end].Select(word => word.Text));

        return (new SoughtPart(text, [text]), end);
    }
}
