using EditionRegister.Domain.Reading.Inscriptions.Copies;
using EditionRegister.Domain.Reading.Inscriptions.Editions;
using EditionRegister.Domain.Reading.Inscriptions.Proofs;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>A fraction, how it stands, and the mark beside it, if one does.</summary>
internal readonly record struct GatheredFraction(Fraction Fraction, FractionStanding Standing, SeriesMet? Series, bool IsAnnounced)
{
    /// <summary>Where the word stands that announces it, or its own first token.</summary>
    public int From { get; init; } = Fraction.Start;
}

/// <summary>A mark, and the number, letter or size that is its own.</summary>
internal readonly record struct GatheredMark(SeriesMet Series, SizeMet? Own);

/// <summary>Everything that was met in a text, from its first word to its last.</summary>
internal sealed class Gathered
{
    // Nobody names more states, and the rest of a text that does is not worth keeping.
    private const int MostStates = 4;

    // Above it "31. Proof" is a day of a month, and 1955. a year.
    private const int MostPlaced = 30;

    private readonly TokenText _text;
    private readonly SeriesReader _series;
    private Surroundings? _around;

    private Gathered(TokenText text, SeriesReader series) => (_text, _series) = (text, series);

    public List<GatheredFraction> Fractions { get; } = [];

    public List<GatheredMark> Marks { get; } = [];

    public List<StateMet> StatesMet { get; } = [];

    public List<SizeMet> Sizes { get; } = [];

    public List<StatedProofs> Beside { get; } = [];

    /// <summary>The first token of proofs beside, and the token after the last.</summary>
    public (int Start, int Next) BesideSpan { get; private set; } = (int.MaxValue, 0);

    /// <summary>Something that only hints at a proof or a number was met.</summary>
    public bool IsFaint { get; private set; }

    public bool IsOutsideEdition { get; private set; }

    public static Gathered From(TokenText text, SeriesReader series)
    {
        Gathered found = new(text, series);

        if (EditionSizes.Alone(text) is { } size)
        {
            found.Sizes.Add(size);

            return found;
        }

        for (var at = 0; at < text.Count;)
        {
            at = Math.Max(at + 1, found.Take(at));
        }

        found.IsFaint |= FaintNumbers.IsBare(text);

        return found;
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

        IsFaint |= FaintNumbers.IsOne(_text, at);

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

        Beside.Add(met.Proofs);
        BesideSpan = (Math.Min(BesideSpan.Start, at), met.Next);

        return met.Next;
    }

    private int? State(int at)
    {
        if (StatesMet.Count >= MostStates || States.At(_text, at) is not { } state)
        {
            return null;
        }

        StatesMet.Add(state);

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

        Marks.Add(new GatheredMark(mark, new SizeMet(at, mark.Next) { Number = ordinal.Value }));

        return mark.Next;
    }

    private int? Size(int at, bool isNumber)
    {
        if (EditionPhrases.At(_text, at, isNumber) is not { } size)
        {
            return null;
        }

        IsOutsideEdition |= _text.Word(at - 1) is "outside" or "beyond" || (_text.IsWord(at - 1, "the") && _text.Word(at - 2) is "outside" or "beyond");
        Sizes.Add(size);

        return size.Next;
    }

    private int? Series(int at) => _series.At(_text, at) is { } mark ? Mark(mark) : null;

    private int? Proof(int at) => PlainProofs.At(_text, at) is { } proof ? Mark(proof) : TrialNumbers.At(_text, at) is { } trial ? Mark(trial) : null;

    private int Mark(SeriesMet mark)
    {
        // A society's monogram, a title's quotation.
        if (_text.IsAnySign(mark.Next, "[(") && _text.IsWord(mark.Next + 1, "monogram"))
        {
            return mark.Next;
        }

        var next = MarkNumbers.Over(_text, mark.Next);

        if (Copies.Fractions.At(_text, next, Before.Mark) is { } fraction && !(_text.IsSign(next, '/') && next == mark.Next) && IsNumberOf(mark, fraction) && !NoCopies.IsOne(_text, fraction, Before.Mark, Around))
        {
            Add(fraction, Before.Mark, mark);

            return fraction.Next;
        }

        var own = MarkNumbers.Behind(_text, mark, next);

        if (!mark.IsSure && (own is null || mark.Certainty == Certainty.Silent) && !MarkNumbers.IsLetters(_text, next))
        {
            IsFaint |= mark.Certainty == Certainty.Doubtful;

            return mark.Next;
        }

        Marks.Add(new GatheredMark(mark, own));

        return Math.Max(mark.Next, own?.Next ?? 0);
    }

    /// <summary>Pp. 191-192 are pages; h.c. 9-10 is a number.</summary>
    private static bool IsNumberOf(SeriesMet mark, Fraction fraction) => mark.IsSure || fraction.Parting is not (Parting.Dash or Parting.InWords);

    private int? Fraction(int at)
    {
        if (Copies.Fractions.Beyond(_text, at) is { } beyond)
        {
            IsFaint = true;

            return beyond;
        }

        if (!Copies.Fractions.MayBegin(_text, at))
        {
            return null;
        }

        var before = Announcements.Of(_text, at, out var word);

        if (Copies.Fractions.At(_text, at, before) is not { } fraction || IsWordsOnly(fraction, before) || NoCopies.IsOne(_text, fraction, before, Around))
        {
            return null;
        }

        var next = OverSigns(fraction.Next);

        if (_series.At(_text, next) is { IsPlural: false } mark && (mark.IsSure || fraction.Parting != Parting.InWords))
        {
            // A mark behind makes sure of what was doubtful alone.
            Add(fraction, Before.Mark, mark);

            return mark.Next;
        }

        Add(fraction, before, null, word);

        return fraction.Next;
    }

    /// <summary>Of, said of anything: only figures before and behind, at the beginning of the text, can be a copy's.</summary>
    private bool IsWordsOnly(Fraction fraction, Before before)
    {
        if (fraction.Parting != Parting.InWords)
        {
            return false;
        }

        var word = Announcements.WordBefore(_text, fraction.Start);

        return before == Before.Anything ? fraction.Start > 0 || fraction.Number.Kind != NumeralKind.Arabic || fraction.Size.IsRoman : EditionWords.IsNumberWord(_text.Word(word)) && !Announcements.BeginsALine(_text, word);
    }

    private void Add(Fraction fraction, Before before, SeriesMet? mark, int? from = null)
    {
        var standing = fraction.IsImpossible ? FractionStanding.Impossible : CopyDoubts.IsOne(_text, fraction, before, Around) ? FractionStanding.Doubtful : FractionStanding.Good;
        Fractions.Add(new GatheredFraction(fraction, standing, mark, before != Before.Anything) { From = from ?? fraction.Start });

        if (mark is { } met)
        {
            Marks.Add(new GatheredMark(met, null));
        }
    }

    private int OverSigns(int at)
    {
        for (var skipped = 0; skipped < 2 && _text.IsAnySign(at, "-(\"'"); skipped++)
        {
            at++;
        }

        return at;
    }

    private Surroundings Around => _around ??= new Surroundings(_text);
}
