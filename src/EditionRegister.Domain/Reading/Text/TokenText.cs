using System.Globalization;
using System.Text;

namespace EditionRegister.Domain.Reading.Text;

/// <summary>
/// A text cut into words, digits and signs in one pass, with the words folded (no accents, small letters) so that one table serves
/// all of them. The texts of museums write a line break as a slash or as ⏎; both are signs here.
/// </summary>
internal sealed class TokenText
{
    private const char FirstAccented = '\u00C0';
    private const char LastAccented = '\u024F';
    private const char FirstCombining = '\u0300';

    // Only letters of the languages read here have accents to lose; normalising every text would be slow.
    private static readonly char[] Unaccented =
        [.. Enumerable.Range(FirstAccented, LastAccented - FirstAccented + 1).Select(c => ((char)c).ToString().Normalize(NormalizationForm.FormD)[0])];

    private readonly char[] _folded;
    private readonly List<ReadToken> _tokens = [];

    public TokenText(string text)
    {
        Text = text;
        _folded = new char[text.Length];

        for (var at = 0; at < text.Length; at++)
        {
            _folded[at] = Fold(text[at]);
        }

        for (var at = 0; at < text.Length;)
        {
            at = char.IsWhiteSpace(text[at]) ? at + 1 : Add(at);
        }
    }

    public string Text { get; }

    public int Count => _tokens.Count;

    public ReadToken this[int at] => _tokens[at];

    public bool IsDigits(int at) => Is(at, TokenKind.Digits);

    public bool IsWord(int at) => Is(at, TokenKind.Word);

    /// <summary>Whether a sign stands there.</summary>
    public bool IsSign(int at, char sign) => Is(at, TokenKind.Sign) && Sign(_tokens[at]) == sign;

    public bool IsAnySign(int at, string signs) => Is(at, TokenKind.Sign) && signs.Contains(Sign(_tokens[at]), StringComparison.Ordinal);

    public bool IsApart(int at) => at < Count && at >= 0 && _tokens[at].Apart;

    /// <summary>The word in small letters without accents; empty where no word stands.</summary>
    public ReadOnlySpan<char> Word(int at) => IsWord(at) ? _folded.AsSpan(_tokens[at].Start, _tokens[at].Length - _tokens[at].Accents) : [];

    public bool IsWord(int at, string word) => Word(at).SequenceEqual(word);

    /// <summary>As written.</summary>
    public ReadOnlySpan<char> Written(int at) => at >= 0 && at < Count ? Text.AsSpan(_tokens[at].Start, _tokens[at].Length) : [];

    /// <summary>The value of digits, or null where none stand or they are too many for any edition.</summary>
    public int? Figure(int at) =>
        IsDigits(at) && _tokens[at].Length <= 6 && int.TryParse(Written(at), NumberStyles.None, CultureInfo.InvariantCulture, out var value) ? value : null;

    private bool Is(int at, TokenKind kind) => at >= 0 && at < Count && _tokens[at].Kind == kind;

    private char Sign(ReadToken token) => _folded[token.Start];

    private int Add(int at)
    {
        var kind = KindOf(Text[at]);
        var end = at + 1;

        while (kind != TokenKind.Sign && end < Text.Length && KindOf(Text[end]) == kind)
        {
            end++;
        }

        _tokens.Add(new ReadToken(kind, at, end - at, at == 0 || char.IsWhiteSpace(Text[at - 1])) { Accents = kind == TokenKind.Word ? CloseUp(at, end) : 0 });

        return end;
    }

    /// <summary>Takes the accents out of a folded word that are characters of their own, as text copied from elsewhere may have them.</summary>
    private int CloseUp(int start, int end)
    {
        var kept = start;

        for (var at = start; at < end; at++)
        {
            if (Text[at] < FirstCombining || CharUnicodeInfo.GetUnicodeCategory(Text[at]) != UnicodeCategory.NonSpacingMark)
            {
                _folded[kept++] = _folded[at];
            }
        }

        return end - kept;
    }

    private static TokenKind KindOf(char c) =>
        char.IsAsciiDigit(c) ? TokenKind.Digits : char.IsLetter(c) || CharUnicodeInfo.GetUnicodeCategory(c) == UnicodeCategory.NonSpacingMark ? TokenKind.Word : TokenKind.Sign;

    // Character for character, so that places in it are places in the text.
    private static char Fold(char c) => c switch
    {
        < '\u0080' => char.ToLowerInvariant(c),
        '\u2044' or '\u2215' or '\uFF0F' => '/',
        '\u2019' or '\u02BC' or '\u2018' => '\'',
        '\u201C' or '\u201D' or '\u2033' => '"',
        '\u2010' or '\u2011' or '\u2012' or '\u2013' or '\u2014' or '\u2212' => '-',
        '\u23CE' => '|',
        'ß' => 's',
        'ı' => 'i',
        'œ' or 'Œ' => 'o',
        _ => char.ToLowerInvariant(WithoutAccent(c)),
    };

    private static char WithoutAccent(char c) => c is >= FirstAccented and <= LastAccented ? Unaccented[c - FirstAccented] : c;
}
