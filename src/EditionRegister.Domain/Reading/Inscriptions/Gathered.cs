using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>A fraction and the mark that stands beside it, if one does.</summary>
internal sealed record GatheredFraction(Fraction Fraction, SeriesMet? Series, bool IsAnnounced)
{
    public FractionStanding Standing => Fraction.Standing;
}

/// <summary>Everything that was met in a text, from its first word to its last.</summary>
internal sealed class Gathered
{
    private readonly List<StatedProofs> _beside = [];

    public List<GatheredFraction> Fractions { get; } = [];

    public List<SeriesMet> Marks { get; } = [];

    /// <summary>What stands behind a mark that has no fraction: its number, letter or size, by the token the mark begins at.</summary>
    public Dictionary<int, SizeMet?> NumbersOfMarks { get; } = [];

    public List<StateMet> States { get; } = [];

    public List<SizeMet> Sizes { get; } = [];

    public IReadOnlyList<StatedProofs> Beside => _beside;

    /// <summary>Something that only hints at a proof or a number was met.</summary>
    public bool IsFaint { get; private set; }

    public bool IsOutsideEdition { get; private set; }

    public static Gathered From(TokenText text)
    {
        Gathered found = new();

        for (var at = 0; at < text.Count;)
        {
            at = Math.Max(at + 1, found.Take(text, at));
        }

        found.IsFaint |= text.Count == 1 && (text.IsDigits(0) || (Numerals.Roman(text, 0) is not null && text[0].Length > 1));

        return found;
    }

    private int Take(TokenText text, int at)
    {
        if (Proofs(text, at) is { } proofs)
        {
            return proofs;
        }

        if (States.Count < 4 && Inscriptions.States.At(text, at) is { } state)
        {
            States.Add(state);

            return state.Next;
        }

        if (SeriesWords.At(text, at) is { } mark)
        {
            return Mark(text, mark);
        }

        if (Inscriptions.Sizes.At(text, at) is { } size)
        {
            IsOutsideEdition |= text.Word(at - 1) is "outside" or "beyond";
            Sizes.Add(size);

            return size.Next;
        }

        var announced = IsAnnounced(text, at);

        if (Inscriptions.Fractions.At(text, at, announced) is { } fraction)
        {
            return Fraction(text, fraction, announced);
        }

        IsFaint |= text.Word(at) is "proof" or "proofs" or "epreuve" or "prova" or "probe";

        return at + 1;
    }

    /// <summary>Edition, ed., numbered, no., # before a fraction.</summary>
    private static bool IsAnnounced(TokenText text, int at)
    {
        var before = text.IsAnySign(at - 1, ".:#,(") ? at - 2 : at - 1;
        before = text.IsAnySign(before, ".:#") ? before - 1 : before;
        var word = text.Word(before);

        return Inscriptions.Sizes.IsEditionWord(word) || word is "number" or "numbered" or "no" or "nr" || text.IsSign(at - 1, '#');
    }

    /// <summary>Plus 10 artist's proofs, + 3 AP, I-X APs: counts beside the edition.</summary>
    private int? Proofs(TokenText text, int at)
    {
        if (text.IsAnySign(at - 1, "/'#") || Range(text, at) is not { } count || SeriesWords.At(text, count.Next) is not { } series)
        {
            return null;
        }

        var listed = text.IsAnySign(at - 1, "+|,(;&") || text.Word(at - 1) is "plus" or "and" or "et" or "with";
        var counted = series.IsPlural || listed || count.Kind == NumeralKind.Word;

        if (!counted || series.IsFaint)
        {
            return null;
        }

        _beside.Add(new StatedProofs(series.Series, count.Value));

        // 1 PP II: the printer's proof that is numbered II.
        return Numerals.Roman(text, series.Next) is { } own && !text.IsWord(own.Next) ? own.Next : series.Next;
    }

    private static Numeral? Range(TokenText text, int at)
    {
        if (Numerals.Roman(text, at) is { Value: 1 } && text.IsSign(at + 1, '-') && Numerals.Roman(text, at + 2) is { } last)
        {
            return last;
        }

        return Numerals.Cardinal(text, at);
    }

    private int Mark(TokenText text, SeriesMet mark)
    {
        // A society's monogram, a title's quotation.
        if (text.IsAnySign(mark.Next, "[(") && text.Word(mark.Next + 1) is "monogram")
        {
            return mark.Next;
        }

        var next = BehindMark(text, mark.Next);

        if (Inscriptions.Fractions.At(text, next, announced: true) is { } fraction && !(text.IsSign(next, '/') && next == mark.Next))
        {
            Fractions.Add(new GatheredFraction(fraction, mark, IsAnnounced: true));
            Marks.Add(mark);

            return fraction.Next;
        }

        var number = Behind(text, mark, next);

        if (mark.IsFaint && number is null && !IsLetters(text, next))
        {
            IsFaint |= text.Count <= 2;

            return mark.Next;
        }

        Marks.Add(mark);
        NumbersOfMarks[mark.Start] = number;

        return Math.Max(mark.Next, number?.Next ?? 0);
    }

    /// <summary>e/e: a lettered copy.</summary>
    private static bool IsLetters(TokenText text, int at) => text.IsWord(at) && text[at].Length == 1 && text.IsSign(at + 1, '/') && text.IsWord(at + 2) && text[at + 2].Length == 1;

    /// <summary>Over signs, "no." and "Series III".</summary>
    private static int BehindMark(TokenText text, int at)
    {
        for (var skipped = 0; skipped < 3; skipped++)
        {
            if (text.IsAnySign(at, "#.:(-"))
            {
                at++;
            }
            else if (text.Word(at) is "no" or "nr" or "number")
            {
                at = text.IsSign(at + 1, '.') ? at + 2 : at + 1;
            }
            else if (text.Word(at) is "series" or "set" && Numerals.Either(text, at + 1) is { IsUnknown: false } series)
            {
                at = series.Next;
            }
        }

        return at;
    }

    /// <summary>A number of its own, a letter, or the size behind a slash: A.P. 5, H.C. C, AP/160, AP from edition of 40.</summary>
    private static SizeMet? Behind(TokenText text, SeriesMet mark, int next)
    {
        if (text.IsSign(mark.Next, '/'))
        {
            var (hedge, figure) = Hedges.Before(text, mark.Next + 1);

            return Numerals.Either(text, figure) is { IsUnknown: false } of && !text.IsSign(of.Next, '/')
                ? new SizeMet(mark.Start, of.Next) { Of = of.Value, Hedge = hedge, IsRoman = of.IsRoman }
                : null;
        }

        if (text.IsDigits(next))
        {
            return Numerals.Arabic(text, next) is { } number && !NoEditionNumbers.IsYear(number.Value) && !text.IsAnySign(number.Next, "/'") && !NoEditionNumbers.IsMonth(text.Word(number.Next))
                ? new SizeMet(mark.Start, number.Next) { Number = number.Value }
                : null;
        }

        if (text.Written(next) is not [>= 'A' and <= 'Z', ..] || text.IsSign(next + 1, '.') || text.IsSign(next - 1, '('))
        {
            return null;
        }

        return Numerals.Roman(text, next) is { } roman && roman.Value <= 100 && text.Written(next) is ['I' or 'V' or 'X', ..]
            ? new SizeMet(mark.Start, roman.Next) { Number = roman.Value, IsRoman = true }
            : text[next].Length == 1 && (next + 1 == text.Count || !text.IsWord(next + 1)) ? new SizeMet(mark.Start, next + 1) { Letter = text.Written(next).ToString() }
            : null;
    }

    private int Fraction(TokenText text, Fraction fraction, bool announced)
    {
        var next = fraction.Next;

        for (var skipped = 0; skipped < 2 && text.IsAnySign(next, "-(\"'"); skipped++)
        {
            next++;
        }

        if (SeriesWords.At(text, next) is { } mark && !mark.IsPlural)
        {
            // A mark behind makes sure of what was doubtful alone.
            Fractions.Add(new GatheredFraction(fraction.Standing == FractionStanding.Doubtful ? fraction with { Standing = FractionStanding.Good } : fraction, mark, IsAnnounced: true));
            Marks.Add(mark);

            return mark.Next;
        }

        Fractions.Add(new GatheredFraction(fraction, null, announced));

        return fraction.Next;
    }
}
