using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>A state as a text names it.</summary>
internal readonly record struct StateMet(int Start, int Next, int? State, int? Of, bool IsRoman, bool IsDoubtful);

/// <summary>Finds states: second state of three, State II, II/III, 1er état, only state.</summary>
internal static class States
{
    public static StateMet? At(TokenText text, int at) =>
        IsStateWord(text.Word(at)) ? Named(text, at) : text.Word(at) is "only" ? Only(text, at) : text.Word(at) is "final" or "last" && IsStateWord(text.Word(at + 1)) ? new StateMet(at, at + 2, null, null, false, false) : Counted(text, at);

    private static bool IsStateWord(ReadOnlySpan<char> word) => word is "state" or "etat" or "stato" or "estado" or "zustand" or "zustandes" or "staat";

    private static StateMet? Only(TokenText text, int at)
    {
        var next = text.Word(at + 1) is "known" or "recorded" ? at + 2 : at + 1;

        return IsStateWord(text.Word(next)) ? new StateMet(at, next + 1, 1, 1, false, false) : null;
    }

    /// <summary>State II, state 2 of 3, state 2/3.</summary>
    private static StateMet? Named(TokenText text, int at)
    {
        if (text.Word(at - 1) is "united" or "empire" || NextNumber(text, text.IsAnySign(at + 1, "#:.") ? at + 2 : at + 1) is not { } state)
        {
            return null;
        }

        // A fraction behind a bare "state" is the copy's number: state II 86/150.
        if (text.IsSign(state.Next, '/') && !state.IsRoman)
        {
            return Numerals.Either(text, state.Next + 1) is { } all && all.Value <= 30 && all.Value >= state.Value
                ? new StateMet(at, all.Next, state.Value, all.Value, all.IsRoman, false)
                : null;
        }

        return WithOf(text, at, state);
    }

    private static StateMet? Counted(TokenText text, int at)
    {
        if (Ordinals.Read(text, at) is not { } ordinal)
        {
            return null;
        }

        // II/III state: the second of three.
        if (text.IsSign(ordinal.Next, '/') && Numerals.Either(text, ordinal.Next + 1) is { IsUnknown: false } all && IsStateWord(text.Word(all.Next)) && ordinal.Value <= all.Value && NextNumber(text, all.Next + 1) is null)
        {
            return new StateMet(at, all.Next + 1, ordinal.Value, all.Value, ordinal.IsRoman || all.IsRoman, false);
        }

        if (text.Word(ordinal.Next) is "or" or "and" && Ordinals.Read(text, ordinal.Next + 1) is { } second && IsStateWordOrPlural(text.Word(second.Next)))
        {
            return new StateMet(at, second.Next + 1, null, null, false, IsDoubtful: true);
        }

        var final = text.IsSign(ordinal.Next, '(') && text.Word(ordinal.Next + 1) is "final" or "last" && text.IsSign(ordinal.Next + 2, ')');
        var final2 = !final && text.Word(ordinal.Next) is "final" or "last";
        var word = final ? ordinal.Next + 3 : ordinal.Next + (final2 || text.Word(ordinal.Next) is "trial" or "published" ? 1 : 0);

        if (!IsStateWord(text.Word(word)) || NoEditionNumbers.IsYear(ordinal.Value))
        {
            return null;
        }

        if (final || final2)
        {
            return new StateMet(at, word + 1, ordinal.Value, ordinal.Value, ordinal.IsRoman, false);
        }

        // First state and only state.
        if (ordinal.Value == 1 && text.Word(word + 1) is "and" && text.Word(word + 2) is "only")
        {
            return new StateMet(at, IsStateWord(text.Word(word + 3)) ? word + 4 : word + 3, 1, 1, ordinal.IsRoman, false);
        }

        return WithOf(text, at, ordinal with { Next = word + 1 });
    }

    private static bool IsStateWordOrPlural(ReadOnlySpan<char> word) => IsStateWord(word) || word is "states" or "etats";

    private static Numeral? NextNumber(TokenText text, int at) =>
        text.IsDigits(at) ? Numerals.Arabic(text, at)
        : Numerals.Roman(text, at) is { } roman && char.IsAsciiLetterUpper(text.Written(at)[0]) && roman.Value <= 40 ? roman
        : null;

    private static StateMet WithOf(TokenText text, int at, Numeral state)
    {
        // Second state of three, and (of three).
        var next = text.IsSign(state.Next, '(') ? state.Next + 1 : state.Next;
        var of = text.Word(next) is "of" or "sur" or "von" or "di" or "de"
            ? text.IsDigits(next + 1) ? Numerals.Arabic(text, next + 1) : Numerals.Cardinal(text, next + 1) ?? Numerals.Roman(text, next + 1)
            : null;

        return of is { } all && all.Value >= state.Value && all.Value <= 60
            ? new StateMet(at, next > state.Next && text.IsSign(all.Next, ')') ? all.Next + 1 : all.Next, state.Value, all.Value, state.IsRoman || all.IsRoman, false)
            : new StateMet(at, state.Next, state.Value, null, state.IsRoman, false);
    }
}
