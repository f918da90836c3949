using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Reading.Text;
using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>One way through the words for a paper: what is known is taken out, and the rest is parted into clauses.</summary>
internal sealed class PaperScan
{
    private readonly TokenText _text;
    private readonly List<PaperEdge> _edges = [];
    private readonly List<string> _notes = [];
    private readonly List<Range> _spans = [];
    private readonly PaperRest _rest;
    private string? _maker;

    // The token after what was read last.
    private int _floor;
    private int? _grams;
    private PaperWeight? _pounds;
    private Size? _basis;
    private (int Start, int Next) _basisAt;
    private string? _lot;
    private Size? _sheet;
    private string? _sheetName;

    public PaperScan(TokenText text)
    {
        _text = text;
        _rest = new PaperRest(text);
    }

    public ReadPaper Run()
    {
        for (var at = 0; at < _text.Count;)
        {
            at = Step(at);
        }

        if (_basis is not null && _pounds is not { Basis: null })
        {
            _rest.Leave(_basisAt);
        }

        var (name, left) = _rest.Parts();

        return new ReadPaper
        {
            Name = name,
            Maker = _maker,
            Weight = Weight(),
            Edges = _edges,
            Lot = _lot,
            Sheet = _sheet,
            SheetName = _sheetName,
            Notes = name is not null && _sheet is null && OldSheetNames.In(name) is { } old ? [.. _notes, Note(old)] : _notes,
            Left = left,
            Spans = _spans,
        };
    }

    private PaperWeight? Weight() => _grams is null && _pounds is null ? null
        : (_pounds ?? new PaperWeight()) with { GramsWritten = _grams, Basis = _pounds is null ? null : _pounds.Basis ?? _basis };

    private static string Note(string old) => $"“{Domain.Text.SafeText.Show(old)}” is an old name of sheets that differed by maker and time, so no size is taken from it. Measure the sheet.";

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

        return Take(at, next, isSecond: Fill(ref _lot, lot));
    }

    private int? Edge(int at)
    {
        if (Edges.At(_text, at, _floor, out var next) is not { } edge || !EndsAt(next))
        {
            return null;
        }

        var isSecond = _edges.Exists(other => other.Kind == edge.Kind);
        _edges.AddRange(isSecond ? [] : [edge]);

        return Take(at, next, isSecond);
    }

    private int? Grams(int at)
    {
        if (Weights.Grams(_text, at, out var next) is not { } grams || !EndsAt(next))
        {
            return null;
        }

        var isSecond = _grams is not null;
        _grams ??= grams;

        return Take(Weights.StartOf(_text, at, null), next, isSecond);
    }

    private int? Pounds(int at)
    {
        if (Weights.Pounds(_text, at, out var next) is not { } pounds || !EndsAt(next))
        {
            return null;
        }

        return Take(Weights.StartOf(_text, at, pounds), next, isSecond: Fill(ref _pounds, pounds));
    }

    private int? Basis(int at)
    {
        if (Weights.Basis(_text, at, out var next) is not { } basis || !EndsAt(next))
        {
            return null;
        }

        var isSecond = Fill(ref _basis, basis);
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

        var read = SizePlacing.Of(pair, null, isRound: false);

        if (_sheet is null && read.Disagreement() is { } disagreement)
        {
            _notes.Add(disagreement);
        }

        return Take(SheetsWritten.StartOf(_text, at), pair.Next, isSecond: Fill(ref _sheet, read.Size!));
    }

    private int LeaveUnread(SizePair pair)
    {
        var (start, next) = (pair.First.Start, pair.First.Next);
        var span = _text[start].Start.._text[next - 1].End;
        _notes.Add(new SizeDeclined(_text.Text[span], pair.Fault, span).WhyNot);

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

        var isSecond = Fill(ref _sheet, IsoSheet.Of(name)!);
        _sheetName = isSecond ? _sheetName : name;

        return Take(at, next, isSecond);
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

        Take(at, end, isSecond: Fill(ref _maker, _text.Text[_text[start].Start.._text[end - 1].End]));

        return end;
    }

    private bool IsItem(int at) => !IsTight(at) && IsAnything(at);

    private bool IsAnything(int at) =>
        Lots.At(_text, at, out _) is not null || Edges.At(_text, at, _floor, out _) is not null || Weights.Grams(_text, at, out _) is not null || Weights.Pounds(_text, at, out _) is not null
        || Weights.Basis(_text, at, out _) is not null || SheetsWritten.At(_text, at) is { Fault: SizeFault.None } || IsoSheet.At(_text, at, out _) is not null || Makers.At(_text, at, _floor) is not null;

    /// <summary>Sets what was not set before; otherwise says that this is the second.</summary>
    private static bool Fill<T>(ref T? place, T value)
        where T : class
    {
        var isSecond = place is not null;
        place ??= value;

        return isSecond;
    }

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
