using EditionRegister.Domain.Reading.Inscriptions.Copies;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>A state as a text names it.</summary>
internal readonly record struct StateMet(int Start, int Next, int? State, int? Of)
{
    public bool IsRoman { get; init; }

    /// <summary>The text leaves open which of two it is.</summary>
    public bool IsDoubtful { get; init; }
}

/// <summary>Finds states: second state of three, State II, II/III, 1er état, only state, final (seventh) state.</summary>
internal static class States
{
    // No plate of the trade's catalogues has more; a larger figure beside the word is something else.
    private const int Most = 60;
    private const int MostOverSlash = 30;

    // Above it stand single letters that are names and abbreviations: C, D, L, M.
    private const int MostRoman = 40;

    public static StateMet? At(TokenText text, int at)
    {
        if (IsWord(text.Word(at)))
        {
            return Named(text, at) ?? InBrackets(text, at);
        }

        return text.Word(at) switch
        {
            "only" or "unique" or "einziger" or "seul" or "unico" => Only(text, at),
            "final" or "last" or "dernier" or "ultimo" or "letzter" => Final(text, at),
            "later" or "early" or "earlier" or "late" or "intermediate" or "finished" or "unfinished" or "undescribed" => Described(text, at),
            _ => Counted(text, at),
        };
    }

    public static bool IsWord(ReadOnlySpan<char> word) => word is "state" or "etat" or "stato" or "estado" or "zustand" or "zustandes" or "staat";

    /// <summary>Engraving, later state: a state, and nothing of which; Finished State Fair is a title.</summary>
    private static StateMet? Described(TokenText text, int at) =>
        IsWord(text.Word(at + 1)) && (at + 2 == text.Count || !text.IsWord(at + 2) || text.Word(at + 2) is "on" or "of" or "with") ? new StateMet(at, at + 2, null, null) : null;

    private static StateMet? Final(TokenText text, int at)
    {
        if (IsWord(text.Word(at + 1)))
        {
            return new StateMet(at, at + 2, null, null);
        }

        // Final (seventh) state.
        return text.IsSign(at + 1, '(') && Ordinals.Read(text, at + 2) is { } ordinal && text.IsSign(ordinal.Next, ')') && IsWord(text.Word(ordinal.Next + 1))
            ? new StateMet(at, ordinal.Next + 2, ordinal.Value, ordinal.Value) { IsRoman = ordinal.IsRoman }
            : null;
    }

    private static StateMet? Only(TokenText text, int at)
    {
        var next = text.Word(at + 1) is "known" or "recorded" or "connu" ? at + 2 : at + 1;

        return IsWord(text.Word(next)) ? new StateMet(at, next + 1, 1, 1) : null;
    }

    /// <summary>Harbour (State), Harbour (Black State): said beside a title, that it is one, and not which.</summary>
    private static StateMet? InBrackets(TokenText text, int at)
    {
        var first = text.Word(at - 1) is "black" or "color" or "colour" or "proof" ? at - 1 : at;

        return first > 1 && text.IsAnySign(first - 1, "([") && text.IsAnySign(at + 1, ")]") ? new StateMet(first, at + 1, null, null) : null;
    }

    /// <summary>State II, state 2 of 3, state 2/3.</summary>
    private static StateMet? Named(TokenText text, int at)
    {
        if (text.Word(at - 1) is "united" or "empire" || NextNumber(text, text.IsAnySign(at + 1, "#:.") ? at + 2 : at + 1) is not { } state)
        {
            return null;
        }

        if (!text.IsSign(state.Next, '/') || (state.IsRoman && !(Numerals.Roman(text, state.Next + 1) is not null)))
        {
            return WithOf(text, at, state);
        }

        // State 2/3 is the second of three; behind a bare "state" a larger size is the copy's: state II 86/150.
        return Numerals.Either(text, state.Next + 1) is { } all && all.Value <= MostOverSlash && all.Value >= state.Value
            ? new StateMet(at, all.Next, state.Value, all.Value) { IsRoman = state.IsRoman || all.IsRoman }
            : null;
    }

    private static StateMet? Counted(TokenText text, int at)
    {
        if (Ordinals.Read(text, at) is not { Value: <= Most } ordinal || (ordinal.IsRoman && ordinal.Value > MostRoman))
        {
            return null;
        }

        return OverAll(text, at, ordinal) ?? Either(text, at, ordinal) ?? Numbered(text, at, ordinal);
    }

    /// <summary>II/III state: the second of three.</summary>
    private static StateMet? OverAll(TokenText text, int at, Numeral ordinal) =>
        text.IsSign(ordinal.Next, '/') && Numerals.Either(text, ordinal.Next + 1) is { IsUnknown: false } all && IsWord(text.Word(all.Next)) && ordinal.Value <= all.Value && all.Value <= Most && NextNumber(text, all.Next + 1) is null
            ? new StateMet(at, all.Next + 1, ordinal.Value, all.Value) { IsRoman = ordinal.IsRoman || all.IsRoman }
            : null;

    /// <summary>3rd or 4th state; between 1st and 2nd state.</summary>
    private static StateMet? Either(TokenText text, int at, Numeral ordinal) =>
        text.Word(ordinal.Next) is "or" or "and" or "ou" or "oder" or "et" or "und" && Ordinals.Read(text, ordinal.Next + 1) is { } second && (IsWord(text.Word(second.Next)) || text.Word(second.Next) is "states" or "etats")
            ? new StateMet(at, second.Next + 1, null, null) { IsDoubtful = true }
            : null;

    private static StateMet? Numbered(TokenText text, int at, Numeral ordinal)
    {
        var inBrackets = text.IsSign(ordinal.Next, '(') && IsLast(text, ordinal.Next + 1) && text.IsSign(ordinal.Next + 2, ')');
        var behindAnd = text.IsWord(ordinal.Next, "and") && IsLast(text, ordinal.Next + 1);
        var isFinal = inBrackets || behindAnd || IsLast(text, ordinal.Next);
        var word = ordinal.Next + (inBrackets ? 3 : behindAnd ? 2 : isFinal || text.Word(ordinal.Next) is "trial" or "published" ? 1 : 0);

        if (!IsWord(text.Word(word)))
        {
            return Abbreviated(text, at, ordinal);
        }

        // First state and only state.
        if (ordinal.Value == 1 && text.IsWord(word + 1, "and") && text.IsWord(word + 2, "only"))
        {
            return new StateMet(at, IsWord(text.Word(word + 3)) ? word + 4 : word + 3, 1, 1) { IsRoman = ordinal.IsRoman };
        }

        return isFinal ? new StateMet(at, word + 1, ordinal.Value, ordinal.Value) { IsRoman = ordinal.IsRoman } : WithOf(text, at, ordinal with { Next = word + 1 });
    }

    private static bool IsLast(TokenText text, int at) => text.Word(at) is "final" or "last";

    /// <summary>2e ét., 2 Et: état cut short, where no other "et" can be meant.</summary>
    private static StateMet? Abbreviated(TokenText text, int at, Numeral ordinal) =>
        text.IsWord(ordinal.Next, "et") && text.Written(ordinal.Next) is ['é' or 'É' or 'E', 't'] && !text.IsWord(ordinal.Next + 1) && ordinal.Value <= Most
            ? new StateMet(at, text.IsSign(ordinal.Next + 1, '.') ? ordinal.Next + 2 : ordinal.Next + 1, ordinal.Value, null) { IsRoman = ordinal.IsRoman }
            : null;

    private static Numeral? NextNumber(TokenText text, int at) =>
        text.IsDigits(at) ? (Numerals.Arabic(text, at) is { Value: <= Most } arabic ? arabic : null)
        : Numerals.Roman(text, at) is { } roman && char.IsAsciiLetterUpper(text.Written(at)[0]) && roman.Value <= MostRoman ? roman
        : null;

    private static StateMet WithOf(TokenText text, int at, Numeral state)
    {
        // Second state of three, and (of three).
        var next = text.IsSign(state.Next, '(') ? state.Next + 1 : state.Next;
        var of = text.Word(next) is "of" or "sur" or "von" or "di" or "de" or "su" ? text.IsDigits(next + 1) ? Numerals.Arabic(text, next + 1) : NumberWords.Cardinal(text, next + 1) ?? Numerals.Roman(text, next + 1) : null;

        return of is { } all && all.Value >= state.Value && all.Value <= Most
            ? new StateMet(at, next > state.Next && text.IsSign(all.Next, ')') ? all.Next + 1 : all.Next, state.Value, all.Value) { IsRoman = state.IsRoman || all.IsRoman }
            : new StateMet(at, state.Next, state.Value, null) { IsRoman = state.IsRoman };
    }
}
