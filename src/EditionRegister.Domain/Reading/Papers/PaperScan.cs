using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>One way through the words for a paper: what is known is taken out, and the rest is parted into clauses.</summary>
internal sealed class PaperScan
{
    private readonly TokenText _text;
    private readonly PaperRest _rest;
    private readonly PaperFound _found = new();
    private readonly List<Range> _spans = [];
    private (int Start, int Next) _basisAt;

    // The token after what was read last.
    private int _floor;

    public PaperScan(TokenText text)
    {
        _text = text;
        _rest = new PaperRest(text);
    }

    /// <summary>Whether anything but a name would be read.</summary>
    public static bool FindsAnything(string written)
    {
        PaperScan scan = new(new TokenText(written));

        for (var at = 0; at < scan._text.Count && scan._spans.Count == 0;)
        {
            at = scan.Step(at);
        }

        return scan._spans.Count > 0;
    }

    public ReadPaper Run()
    {
        for (var at = 0; at < _text.Count;)
        {
            at = Step(at);
        }

        if (_found.HasLooseBasis)
        {
            _rest.Leave(_basisAt);
        }

        var (name, left) = _rest.Parts();

        return _found.With(name, left, _spans);
    }

    private int Step(int at) => !IsTight(at) && (Lot(at) ?? Edge(at) ?? Grams(at) ?? Pounds(at) ?? Basis(at) ?? Sheet(at) ?? IsoName(at) ?? Maker(at)) is { } next ? next : Word(at);

    /// <summary>Nothing is read out of the middle of 12lot, barbes12 or x#70.</summary>
    private bool IsTight(int at) =>
        at > 0 && at < _text.Count && !_text.IsApart(at) && (_text.IsWord(at) || _text.IsDigits(at)) && !PaperRest.Separates(_text, at - 1) && !_text.IsAnySign(at - 1, ":=/\"'");

    private bool EndsAt(int next) => next >= _text.Count || _text.IsApart(next) || !(_text.IsWord(next) || _text.IsDigits(next)) || PaperRest.Separates(_text, next - 1);

    private int Word(int at)
    {
        _rest.Add(at);

        return at + 1;
    }

    private int? Lot(int at)
    {
        if (Lots.At(_text, at, out var next) is not { } lot || !EndsAt(next))
        {
            return null;
        }

        return Take(at, next, isSecond: _found.Lot(lot));
    }

    private int? Edge(int at)
    {
        if (Edges.At(_text, at, _floor, out var next) is not { } edge || !EndsAt(next))
        {
            return null;
        }

        return Take(at, next, isSecond: _found.Edge(edge));
    }

    private int? Grams(int at)
    {
        if (Weights.Grams(_text, at, out var next) is not { } grams || !EndsAt(next))
        {
            return null;
        }

        return Take(Weights.StartOf(_text, at, null), next, isSecond: _found.Grams(grams));
    }

    private int? Pounds(int at)
    {
        if (Weights.Pounds(_text, at, out var next) is not { } pounds || !EndsAt(next))
        {
            return null;
        }

        return Take(Weights.StartOf(_text, at, pounds), next, isSecond: _found.Pounds(pounds));
    }

    private int? Basis(int at)
    {
        if (Weights.Basis(_text, at, out var next) is not { } basis || !EndsAt(next))
        {
            return null;
        }

        var isSecond = _found.Basis(basis);
        _basisAt = isSecond ? _basisAt : (at, next);

        return Take(at, next, isSecond);
    }

    private int? Sheet(int at)
    {
        if (SheetsWritten.At(_text, at) is not { } pair || !EndsAt(pair.Next))
        {
            return null;
        }

        if (pair.Fault != SizeFault.None)
        {
            return LeaveUnread(pair);
        }

        return Take(SheetsWritten.StartOf(_text, at), pair.Next, isSecond: _found.Sheet(SizePlacing.Of(pair, null, isRound: false)));
    }

    private int LeaveUnread(SizePair pair)
    {
        var (start, next) = (pair.First.Start, pair.First.Next);
        var span = _text[start].Start.._text[next - 1].End;
        _found.Note(new SizeDeclined(_text.Text[span], pair.Fault, span).WhyNot);

        for (var at = start; at < next; at++)
        {
            _rest.Add(at);
        }

        return next;
    }

    private int? IsoName(int at)
    {
        if (IsoSheet.At(_text, at, out var next) is not { } name || !EndsAt(next))
        {
            return null;
        }

        return Take(at, next, isSecond: _found.Sheet(name));
    }

    private int? Maker(int at)
    {
        if (Makers.At(_text, at, _floor) is not { } start)
        {
            return null;
        }

        var next = start + 1;

        while (next < _text.Count && !PaperRest.Separates(_text, next) && !Breaks.IsBefore(_text, next) && !IsItem(next))
        {
            next++;
        }

        var end = next;

        while (end > start + 1 && ((_text.IsApart(end - 1) && PaperWords.IsConnecting(_text.Word(end - 1))) || ClauseRuns.IsTrailingSign(_text, end - 1)))
        {
            end--;
        }

        Take(at, end, isSecond: _found.Maker(_text.Text[_text[start].Start.._text[end - 1].End]));

        return end;
    }

    private bool IsItem(int at) => !IsTight(at) && IsAnything(at);

    private bool IsAnything(int at) =>
        Lots.At(_text, at, out _) is not null || Edges.At(_text, at, _floor, out _) is not null || Weights.Grams(_text, at, out _) is not null || Weights.Pounds(_text, at, out _) is not null
        || Weights.Basis(_text, at, out _) is not null || SheetsWritten.At(_text, at) is { Fault: SizeFault.None } || IsoSheet.At(_text, at, out _) is not null || Makers.At(_text, at, _floor) is not null;

    private int Take(int start, int next, bool isSecond)
    {
        _spans.Add(_text[start].Start.._text[next - 1].End);

        _rest.TakeOut(start);
        _floor = next;

        if (isSecond)
        {
            _rest.Leave((start, next));
        }

        return next;
    }
}
