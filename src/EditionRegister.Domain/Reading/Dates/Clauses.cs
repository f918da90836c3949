using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Walks a text and puts each date where it belongs: to the thing itself, to something that happened, in brackets, or to another thing.</summary>
internal sealed class Clauses
{
    // How far "after" looks for the original it speaks of: after a painted terra cotta original of 1958.
    private const int OriginalWithin = 10;

    private readonly TokenText _text;
    private readonly Stack<Happening?> _outer = new();
    private Happening? _now;
    private bool _isElsewhere;

    public Clauses(TokenText text)
    {
        _text = text;

        for (var at = 0; at < text.Count;)
        {
            at = Step(at);
        }
    }

    public List<DateSaid> Own { get; } = [];

    public List<DateSaid> InBrackets { get; } = [];

    /// <summary>In the style of the 16th century, with a later mount: only read where nothing else is said.</summary>
    public List<DateSaid> Elsewhere { get; } = [];

    public List<Happening> Happenings { get; } = [];

    private int Step(int at)
    {
        Punctuate(at);
        _isElsewhere |= IsElsewhere(at);

        if (Original(at) is { } original)
        {
            _now = Add(new Happening(original, isOfImage: false, isOfAnother: true, when: null));

            return at + 1;
        }

        if (_now is not { IsOfAnother: true } && EventWords.At(_text, at) is { } word)
        {
            _now = Add(new Happening(word.Shown, word.IsOfImage, isOfAnother: false, EventWords.When(_text, at)));

            return at + 1;
        }

        return Eras.AfterOther(_text, at) ?? (DateSpans.At(_text, at) is { } date ? Place(date) : at + 1);
    }

    private void Punctuate(int at)
    {
        if (_text.IsAnySign(at, "(["))
        {
            _outer.Push(_now);
            _now = _now is { Dates.Count: 0 } ? _now : null;
        }
        else if (_text.IsAnySign(at, ")]") && _outer.TryPop(out var before))
        {
            (_now, _isElsewhere) = (before, false);
        }
        else if (_text.IsAnySign(at, ";|/"))
        {
            (_now, _isElsewhere) = (null, false);
        }
        else if (_text.IsSign(at, ','))
        {
            (_now, _isElsewhere) = (_now is { IsOfAnother: true } ? null : _now, false);
        }
    }

    private int Place(DateSaid date)
    {
        var next = date.Next;

        if (_isElsewhere)
        {
            Elsewhere.Add(date);
        }
        else if (_now is not null)
        {
            _now.Dates.Add(date);
        }
        else if (Behind(date.Next) is var (word, after))
        {
            Add(new Happening(word.Shown, word.IsOfImage, isOfAnother: false, when: null)).Dates.Add(date);
            next = after;
        }
        else
        {
            (_outer.Count > 0 ? InBrackets : Own).Add(date);
        }

        return next;
    }

    /// <summary>1925 (designed); 1850 (date of publication); 1991 designed; c. 1865 print from a negative: unless the word leads to a date of its own.</summary>
    private (EventWord Word, int Next)? Behind(int at)
    {
        var bracket = _text.IsAnySign(at, "([");
        var said = bracket ? at + 1 : at;
        said = _text.IsWord(said, "date") && _text.IsWord(said + 1, "of") ? said + 2 : said;

        if (EventWords.At(_text, said) is not { } word)
        {
            return null;
        }

        var next = said + 1;

        return bracket ? _text.IsAnySign(next, ")]") ? (word, next + 1) : null
            : next == _text.Count || _text.IsAnySign(next, ",;/|)") || Original(next) is not null ? (word, next)
            : null;
    }

    /// <summary>After a 1958 original, from a negative of 1860, copy of a drawing of 1732: the thing that is named, where a date stands with it.</summary>
    private string? Original(int at)
    {
        if (!(_text.Word(at) is "after" or "from" or "nach" or "apres" or "da" or "dal" || (_text.IsWord(at, "of") && _text.Word(at - 1) is "copy" or "replica" or "reproduction" or "facsimile")))
        {
            return null;
        }

        string? thing = null;
        var isDated = false;

        for (var next = at + 1; next < Math.Min(at + OriginalWithin, _text.Count) && !_text.IsAnySign(next, ",;()[]|"); next++)
        {
            thing ??= EventWords.AnotherThing(_text, next);
            isDated |= _text.IsDigits(next) && _text[next].Length >= 3;
        }

        return isDated ? thing : null;
    }

    private bool IsElsewhere(int at) =>
        _text.Word(at) is "with" or "style" or "copying" || (_text.IsWord(at, "in") && _text.IsWord(at + 1, "the") && _text.Word(at + 2) is "style" or "manner");

    private Happening Add(Happening happening)
    {
        Happenings.Add(happening);

        return happening;
    }
}
