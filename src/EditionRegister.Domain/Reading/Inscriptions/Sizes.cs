using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>A size or a copy number that words announce: edition of 75, 25 impressions, set #116.</summary>
internal readonly record struct SizeMet(int Start, int Next)
{
    public int? Number { get; init; }

    public int? Of { get; init; }

    public string? Letter { get; init; }

    public bool IsRoman { get; init; }

    public SizeHedge Hedge { get; init; }

    /// <summary>The words say that there is no number: open, unlimited, unique.</summary>
    public bool IsOpen { get; init; }

    /// <summary>A size is spoken of without a figure that can be kept: between 75 and 100, less than 100.</summary>
    public bool IsVague { get; init; }

    /// <summary>The number's place before the edition is named: first cast in an edition of 12.</summary>
    public bool IsDoubtful { get; init; }
}

/// <summary>Finds what is said of an edition in words.</summary>
internal static class Sizes
{
    public static bool IsEditionWord(ReadOnlySpan<char> word) =>
        word is "edition" or "ed" or "edn" or "edit" or "tirage" or "tiratura" or "tirada" or "tiraje" or "auflage" or "edizione" or "edicion" or "editions";

    public static SizeMet? At(TokenText text, int at) =>
        Open(text, at) ?? Vague(text, at) ?? OfEdition(text, at) ?? Copy(text, at) ?? BesideEdition(text, at) ?? OfAnEdition(text, at) ?? Counted(text, at);

    private static SizeMet? Open(TokenText text, int at)
    {
        var word = text.Word(at);

        return word is "uneditioned" or "unnumbered" or "unlimited" or "unnumeriert" ? new SizeMet(at, at + 1) { IsOpen = true }
            : word is "open" && IsEditionWord(text.Word(at + 1)) ? new SizeMet(at, at + 2) { IsOpen = true }
            : word is "not" && text.Word(at + 1) is "numbered" or "editioned" ? new SizeMet(at, at + 2) { IsOpen = true }
            : word is "unique" && (text.Count == 1 || text.Word(at + 1) is "impression" or "print" or "work" or "edition") ? new SizeMet(at, Math.Min(at + 2, text.Count)) { IsOpen = true }
            : null;
    }

    /// <summary>Less than 100, between 75 and 100: a size, and no figure to keep.</summary>
    private static SizeMet? Vague(TokenText text, int at)
    {
        if (at != 0 && !IsEditionWord(text.Word(at - 1)) && !IsEditionWord(text.Word(at - 2)))
        {
            return null;
        }

        return text.Word(at) is "less" or "fewer" or "under" && text.IsDigits(text.IsWord(at + 1, "than") ? at + 2 : at + 1) ? new SizeMet(at, text.IsWord(at + 1, "than") ? at + 3 : at + 2) { IsVague = true, Hedge = SizeHedge.AtMost }
            : text.Word(at) is "between" && text.IsDigits(at + 1) && text.IsWord(at + 2, "and") && text.IsDigits(at + 3) ? new SizeMet(at, at + 4) { IsVague = true, Hedge = SizeHedge.About }
            : null;
    }

    /// <summary>Edition of 75, Ed. 100, Edition - 15, Ed. / 54, tirage à 30; edition no. 12 is a copy.</summary>
    private static SizeMet? OfEdition(TokenText text, int at)
    {
        if (!IsEditionWord(text.Word(at)))
        {
            return null;
        }

        var next = at + 1;
        var isCopy = false;

        for (var skipped = 0; skipped < 5 && (text.IsAnySign(next, ".:,#-/|'(") || IsBetween(text.Word(next))); skipped++, next++)
        {
            isCopy |= text.IsSign(next, '#') || text.Word(next) is "number" or "no" or "nr" or "num";
        }

        var (hedge, figure) = Hedges.Before(text, next);

        if ((text.IsDigits(figure) ? Numerals.Arabic(text, figure) : Numerals.Cardinal(text, figure) ?? CapitalRoman(text, figure)) is not { } size)
        {
            return null;
        }

        // A fraction is a copy's number, and is read as one; a year says when it was published.
        if (text.IsSign(size.Next, '/') || (text.IsWord(size.Next, "of") && text.IsDigits(size.Next + 1)) || (NoEditionNumbers.IsYear(size.Value) && hedge == SizeHedge.None && !text.IsWord(at + 1, "of")) || IsOrdinal(text, size.Next))
        {
            return null;
        }

        if (text.IsSign(size.Next, '-') && text.IsDigits(size.Next + 1))
        {
            return new SizeMet(at, size.Next + 2) { IsVague = true, Hedge = SizeHedge.About };
        }

        if (text.IsWord(size.Next, "or") && text.IsDigits(size.Next + 1))
        {
            return new SizeMet(at, size.Next + 2) { IsVague = true, IsDoubtful = true };
        }

        var (doubted, end) = Hedges.Behind(text, size.Next);

        return isCopy
            ? new SizeMet(at, end) { Number = size.Value, IsRoman = size.IsRoman }
            : new SizeMet(at, end) { Of = size.Value, IsRoman = size.IsRoman, Hedge = hedge != SizeHedge.None ? hedge : doubted ? SizeHedge.About : SizeHedge.None };
    }

    private static bool IsOrdinal(TokenText text, int at) => text.Word(at) is "st" or "nd" or "rd" or "th" && !text.IsApart(at);

    private static bool IsBetween(ReadOnlySpan<char> word) => word is "of" or "number" or "no" or "nr" or "num" or "de" or "di" or "da" or "von" or "a" or "size" or "is" or "limited" or "to" or "the" or "zu" or "in" or "en" or "was";

    private static Numeral? CapitalRoman(TokenText text, int at) =>
        Numerals.Roman(text, at) is { } roman && text.Written(at).Length > 1 && char.IsAsciiLetterUpper(text.Written(at)[0]) ? roman : null;

    /// <summary>Set #116, copy no. 5, No. 11 of an estimated 15.</summary>
    private static SizeMet? Copy(TokenText text, int at)
    {
        var word = text.Word(at);
        var plainly = word is "copy" or "exemplaire" or "exemplar" or "esemplare" or "ejemplar" ? Numerals.Arabic(text, at + 1) : null;
        var number = plainly ?? (word is "set" or "copy" or "print" or "impression" or "exemplaire" or "exemplar" or "esemplare" or "ejemplar" ? AfterNumberSign(text, at + 1) : word is "no" or "nr" ? AfterDot(text, at + 1) : null);

        if (number is not { } copy || text.IsSign(copy.Next, '/') || (text.IsSign(copy.Next, '-') && text.IsDigits(copy.Next + 1)))
        {
            return null;
        }

        if (text.IsWord(copy.Next, "of"))
        {
            var (hedge, next) = Hedges.Before(text, copy.Next + 1);

            return Numerals.Cardinal(text, next) is { } size && size.Value >= copy.Value ? new SizeMet(at, size.Next) { Number = copy.Value, Of = size.Value, Hedge = hedge } : null;
        }

        return word is "no" or "nr" ? null : new SizeMet(at, copy.Next) { Number = copy.Value };
    }

    /// <summary>#18 of a recorded edition of 24, No. 26, ed. 50.</summary>
    private static SizeMet? BesideEdition(TokenText text, int at)
    {
        var number = text.IsSign(at, '#') ? Numerals.Arabic(text, at + 1) : text.Word(at) is "no" or "nr" ? AfterDot(text, at + 1) : null;

        if (number is not { } copy)
        {
            return null;
        }

        var next = text.IsAnySign(copy.Next, ",;") || text.Word(copy.Next) is "of" or "from" or "in" ? copy.Next + 1 : copy.Next;

        for (var skipped = 0; skipped < 3 && text.Word(next) is "a" or "an" or "the" or "recorded" or "limited" or "planned" or "numbered"; skipped++)
        {
            next++;
        }

        return OfEdition(text, next) is { Of: { } of } edition && of >= copy.Value ? new SizeMet(at, edition.Next) { Number = copy.Value, Of = of, Hedge = edition.Hedge } : null;
    }

    private static Numeral? AfterNumberSign(TokenText text, int at) =>
        text.IsSign(at, '#') ? Numerals.Arabic(text, at + 1) : text.Word(at) is "no" or "nr" or "number" ? AfterDot(text, at + 1) : null;

    private static Numeral? AfterDot(TokenText text, int at) => Numerals.Arabic(text, text.IsAnySign(at, ".°") ? at + 1 : at);

    /// <summary>First cast in an edition of 12, the first of an estimated 6, N of edition of 16.</summary>
    private static SizeMet? OfAnEdition(TokenText text, int at)
    {
        if (text.IsWord(at) && text[at].Length == 1 && char.IsAsciiLetterUpper(text.Written(at)[0]) && text.IsWord(at + 1, "of") && IsEditionWord(text.Word(at + 2)) && OfEdition(text, at + 2) is { Of: { } lettered } edition)
        {
            return new SizeMet(at, edition.Next) { Letter = text.Written(at).ToString(), Of = lettered };
        }

        if (!text.IsWord(at) || Ordinals.Read(text, at) is not { Kind: NumeralKind.Word } ordinal)
        {
            return null;
        }

        var next = text.Word(ordinal.Next) is "cast" or "casting" or "print" or "impression" or "copy" ? ordinal.Next + 1 : ordinal.Next;

        if (text.Word(next) is "in" or "of" or "from")
        {
            var after = text.Word(next + 1) is "a" or "an" or "the" ? next + 2 : next + 1;
            after = text.Word(after) is "planned" or "limited" or "projected" ? after + 1 : after;

            if (OfEdition(text, after) is { Of: { } of } named && ordinal.Value <= of)
            {
                return new SizeMet(at, named.Next) { Number = ordinal.Value, Of = of, Hedge = named.Hedge };
            }

            var (hedge, figure) = Hedges.Before(text, next + 1);

            if (Numerals.Cardinal(text, figure) is { } size && ordinal.Value <= size.Value && IsCountWord(text, size.Next, out var end))
            {
                return new SizeMet(at, end) { Number = ordinal.Value, Of = size.Value, Hedge = hedge };
            }
        }

        return null;
    }

    /// <summary>25 impressions, fifteen proofs, 50 prints, 7 imp., 100 (first ed.).</summary>
    private static SizeMet? Counted(TokenText text, int at)
    {
        if (Numerals.Cardinal(text, at) is not { } count || count.Value < 2 || text.IsAnySign(at - 1, "'/#.") || text.IsAnySign(at - 1, "+-") || NoEditionNumbers.IsMonth(text.Word(at - 1)))
        {
            return null;
        }

        if (at == 0 && text.IsSign(count.Next, '(') && HasEditionInBrackets(text, count.Next))
        {
            return new SizeMet(at, count.Next) { Of = count.Value };
        }

        if (text.Word(count.Next) is "artist" && text.IsSign(count.Next + 1, '\'') && text.IsWord(count.Next + 2, "s") && IsEditionWord(text.Word(count.Next + 3)))
        {
            return new SizeMet(at, count.Next + 4) { Of = count.Value };
        }

        // "'68 imp" is a year; so may be a figure above 31 before a bare "imp".
        if (text.IsWord(count.Next, "imp"))
        {
            return new SizeMet(at, text.IsSign(count.Next + 1, '.') ? count.Next + 2 : count.Next + 1) { Of = count.Value, IsDoubtful = count.Value > 31 || IsPrintersMark(text, count.Next) };
        }

        // One of two known casts says how rare it is, not how many were made.
        return IsCountWord(text, count.Next, out var end) && !NoEditionNumbers.IsYear(count.Value)
            ? new SizeMet(at, end) { Of = count.Value, Hedge = text.Word(at - 1) is "estimated" or "about" or "approximately" or "circa" ? SizeHedge.About : SizeHedge.None, IsDoubtful = text.IsWord(at - 1, "of") }
            : null;
    }

    // imp for somebody, imp. with a name behind: printed by.
    private static bool IsPrintersMark(TokenText text, int at) => text.IsWord(text.IsSign(at + 1, '.') ? at + 2 : at + 1);

    private static bool HasEditionInBrackets(TokenText text, int at)
    {
        for (var next = at + 1; next < Math.Min(at + 6, text.Count) && !text.IsSign(next, ')'); next++)
        {
            if (IsEditionWord(text.Word(next)))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsCountWord(TokenText text, int at, out int next)
    {
        for (var skipped = 0; skipped < 3 && text.Word(at) is "estimated" or "lifetime" or "signed" or "numbered" or "known"; skipped++)
        {
            at++;
        }

        next = at + 1;

        return text.Word(at) is "prints" or "impressions" or "copies" or "proofs" or "casts" or "exemplaires" or "exemplare" or "exemplaren" or "epreuves" or "esemplari" or "ejemplares" or "abzuge" or "drucke" or "pulls";
    }
}
