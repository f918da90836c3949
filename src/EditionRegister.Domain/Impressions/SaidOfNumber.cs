using EditionRegister.Domain.Reading.Inscriptions;

namespace EditionRegister.Domain.Impressions;

/// <summary>What was read in a pencilled number or an inscription, as the register keeps it beside the words. The words are as found.</summary>
/// <param name="Kind">numbered, proof, state, size, open, or declined: something stands there and nobody can say what.</param>
public sealed record SaidOfNumber(string Kind)
{
    /// <summary>The facts it is kept in, each behind the name of what was read.</summary>
    public static IReadOnlyList<string> Facts { get; } = ["kind", "series", "number", "size", "hedge", "notation", "state", "state_of"];

    public string? Series { get; init; }

    /// <summary>The place in the numbering; of a letter its place in the alphabet.</summary>
    public int? Number { get; init; }

    public int? Size { get; init; }

    /// <summary>at-least, at-most or about; null where the size is sure.</summary>
    public string? Hedge { get; init; }

    /// <summary>arabic, roman or letters; null where there is neither number nor size.</summary>
    public string? Notation { get; init; }

    public int? State { get; init; }

    public int? StateOf { get; init; }

    /// <summary>Null where the text says nothing of any of these.</summary>
    public static SaidOfNumber? Of(EditionStatement read)
    {
        ArgumentNullException.ThrowIfNull(read);

        return KindOf(read.Kind) is not { } kind ? null : new SaidOfNumber(kind)
        {
            Series = read.Series,
            Number = read.Letter is { } letter && Numbers.Notation.Letters.TryRead(letter, out var place) ? place : AboveNothing(read.Number),
            Size = AboveNothing(read.Of),
            Hedge = HedgeOf(read.Hedge),
            Notation = read.Letter is not null ? "letters" : read.NumberIsRoman ? "roman" : (read.Number ?? read.Of) is not null ? "arabic" : null,
            State = AboveNothing(read.State),
            StateOf = AboveNothing(read.StateOf),
        };
    }

    private static int? AboveNothing(int? figure) => figure is >= 1 ? figure : null;

    private static string? KindOf(StatementKind kind) => kind switch
    {
        StatementKind.Numbered => "numbered",
        StatementKind.Proof => "proof",
        StatementKind.State => "state",
        StatementKind.Size => "size",
        StatementKind.Open => "open",
        StatementKind.Declined => "declined",
        _ => null,
    };

    private static string? HedgeOf(SizeHedge hedge) => hedge switch
    {
        SizeHedge.AtLeast => "at-least",
        SizeHedge.AtMost => "at-most",
        SizeHedge.About => "about",
        _ => null,
    };
}
