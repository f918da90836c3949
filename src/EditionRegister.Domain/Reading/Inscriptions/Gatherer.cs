using EditionRegister.Domain.Reading.Inscriptions.Copies;
using EditionRegister.Domain.Reading.Inscriptions.Editions;
using EditionRegister.Domain.Reading.Inscriptions.Proofs;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>Goes through a text once, from its first word to its last, and gathers what is said of numbers, editions, proofs and states.</summary>
internal sealed class Gatherer
{
    // Nobody names more states, and the rest of a text that does is not worth keeping.
    private const int MostStates = 4;

    // Above it "31. Proof" is a day of a month, and 1955. a year.
    private const int MostPlaced = 30;

    private readonly TokenText _text;
    private readonly SeriesReader _series;
    private readonly Gathered _found = new();
    private readonly CopyGatherer _copies;

    private Gatherer(TokenText text, SeriesReader series) => (_text, _series, _copies) = (text, series, new CopyGatherer(text, series, _found));

    public static Gathered Gather(TokenText text, SeriesReader series)
    {
        Gatherer gatherer = new(text, series);

        if (EditionSizes.Alone(text) is { } size)
        {
            gatherer._found.Sizes.Add(size);

            return gatherer._found;
        }

        for (var at = 0; at < text.Count;)
        {
            at = Math.Max(at + 1, gatherer.Take(at));
        }

        gatherer._found.IsFaint |= FaintNumbers.IsBare(text);

        return gatherer._found;
    }

    private int Take(int at) => _text.IsDigits(at) ? Digits(at) : _text.IsWord(at) ? Word(at) : Sign(at);

    /// <summary>What stands behind a figure says what it can be; behind most stands a slash or nothing.</summary>
    private int Digits(int at) =>
        at + 1 == _text.Count ? at
        : _text.IsSign(at + 1, '/') && !_text.IsWord(at + 2) ? State(at) ?? Fraction(at) ?? at
        : Counted(at) ?? State(at) ?? Placed(at) ?? Size(at, isNumber: true) ?? Fraction(at) ?? at;

    private int Word(int at)
    {
        var opening = Vocabulary.Of(_text.Word(at));
        var isNumber = (opening & Opening.Number) != 0 || Numerals.Roman(_text, at) is not null || _text[at].Length == 1;

        if (opening == Opening.None && !isNumber)
        {
            return (_text[at].Length <= Initials.Longest || _series.HasOwn ? Series(at) : null) ?? (_text.IsSign(at + 1, '/') ? Fraction(at) : null) ?? at;
        }

        return isNumber
            ? Counted(at) ?? State(at) ?? Placed(at) ?? Series(at) ?? Size(at, isNumber: true) ?? Fraction(at) ?? Named(at, opening)
            : State(at) ?? Series(at) ?? Size(at, isNumber: false) ?? Named(at, opening);
    }

    private int Named(int at, Opening opening)
    {
        if ((opening & (Opening.Faint | Opening.Edition)) == 0)
        {
            return at;
        }

        _found.IsFaint |= FaintNumbers.IsOne(_text, at);

        return Proof(at) ?? at;
    }

    private int Sign(int at) =>
        _text.IsAnySign(at, "/?") ? Fraction(at) ?? at
        : _text.IsAnySign(at, "#№") ? Size(at, isNumber: false) ?? at
        : _series.HasOwn ? Series(at) ?? at
        : at;

    private int? Counted(int at)
    {
        if (ProofsBeside.At(_text, at, _series) is not { } met)
        {
            return null;
        }

        _found.Beside.Add(met.Proofs);
        _found.BesideSpan = (Math.Min(_found.BesideSpan.Start, at), met.Next);

        return met.Next;
    }

    private int? State(int at)
    {
        if (_found.States.Count >= MostStates || States.At(_text, at) is not { } state)
        {
            return null;
        }

        _found.States.Add(state);

        return state.Next;
    }

    /// <summary>Second proof, 2nd trial proof.</summary>
    private int? Placed(int at)
    {
        if ((_text.IsDigits(at) ? Ordinals.WithEnding(_text, at) : NumberWords.Ordinal(_text, at)) is not { Value: <= MostPlaced } ordinal || NumberWords.Cardinal(_text, at) is not null)
        {
            return null;
        }

        if ((_series.At(_text, ordinal.Next) ?? PlainProofs.At(_text, ordinal.Next)) is not { IsSure: true, IsPlural: false } mark)
        {
            return null;
        }

        _found.Marks.Add(new GatheredMark(mark, new SizeMet(at, mark.Next) { Number = ordinal.Value }));

        return mark.Next;
    }

    private int? Size(int at, bool isNumber)
    {
        if (EditionPhrases.At(_text, at, isNumber) is not { } size)
        {
            return null;
        }

        _found.IsOutsideEdition |= _text.Word(at - 1) is "outside" or "beyond" || (_text.IsWord(at - 1, "the") && _text.Word(at - 2) is "outside" or "beyond");
        _found.Sizes.Add(size);

        return size.Next;
    }

    private int? Fraction(int at) => _copies.Fraction(at);

    private int? Series(int at) => _series.At(_text, at) is { } mark ? _copies.Mark(mark) : null;

    private int? Proof(int at) => PlainProofs.At(_text, at) is { } proof ? _copies.Mark(proof) : TrialNumbers.At(_text, at) is { } trial ? _copies.Mark(trial) : null;
}
