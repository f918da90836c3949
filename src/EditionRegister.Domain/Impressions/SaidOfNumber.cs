using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Impressions;

/// <summary>What was read in a pencilled number or an inscription, as the register keeps it beside the words. The words are as found.</summary>
/// <param name="Kind">numbered, proof, state, size, open, or declined: something stands there and nobody can say what.</param>
public sealed record SaidOfNumber(string Kind)
{
    /// <summary>The kind of what stands there and was not read.</summary>
    public const string Declined = "declined";

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

    /// <summary>What a plain number says.</summary>
    public static SaidOfNumber Of(PencilledNumber plain)
    {
        ArgumentNullException.ThrowIfNull(plain);

        return new SaidOfNumber(plain.Kind == NumberingKind.Numbered ? "numbered" : "proof")
        {
            Series = SheetReader.SeriesOf(plain.Kind),
            Number = plain.Number,
            Size = plain.Of,
            Notation = plain.Notation == Numbers.Notation.None ? null : plain.Notation.Word,
        };
    }

    /// <summary>Null where the text says nothing of any of these.</summary>
    public static SaidOfNumber? Of(EditionStatement read)
    {
        ArgumentNullException.ThrowIfNull(read);

        // A proof's own number is not out of the edition's size that stands beside it.
        var isEditions = (read.Number ?? (object?)read.Letter) is not null && StatementSize.IsOfTheEdition(read);

        return KindOf(read.Kind) is not { } kind ? null : new SaidOfNumber(kind)
        {
            Series = read.Series,
            Number = read.NumberIsDoubted ? null : read.Letter is { } letter && Numbers.Notation.Letters.TryRead(letter, out var place) ? place : AboveNothing(read.Number),
            Size = isEditions ? null : AboveNothing(StatementSize.FigureOf(read)),
            Hedge = isEditions ? null : HedgeOf(read.Hedge),
            Notation = read.Letter is not null ? "letters" : read.NumberIsRoman ? "roman" : (read.Number ?? read.Of) is not null ? "arabic" : null,
            State = AboveNothing(read.State),
            StateOf = AboveNothing(read.StateOf),
        };
    }

    /// <summary>The number that can be given to a sheet; null where nothing says one, or where the register has no such kind.</summary>
    /// <param name="own">The register's own kinds.</param>
    public PencilledNumber? AsNumber(OwnWords own)
    {
        if (Kind is not ("numbered" or "proof" or "open") || SheetReader.KindOf(Series, own) is not { } kind)
        {
            return null;
        }

        if (Number is not { } number)
        {
            return kind == NumberingKind.Numbered ? null : new PencilledNumber(kind, Numbers.Notation.None);
        }

        var size = Hedge is null ? Size : null;

        return Numbers.Notation.TryFind(Notation, out var notation) && number >= 1 && number <= (size ?? number) && (size ?? number) <= notation.Largest
            ? new PencilledNumber(kind, notation, number, size)
            : null;
    }

    /// <summary>As a statement again, to be told in words.</summary>
    public EditionStatement AsStatement() => new()
    {
        Kind = Kind switch
        {
            "numbered" => StatementKind.Numbered,
            "proof" => StatementKind.Proof,
            "state" => StatementKind.State,
            "size" => StatementKind.Size,
            "open" => StatementKind.Open,
            Declined => StatementKind.Declined,
            _ => StatementKind.None,
        },
        Series = Series,
        Number = Notation == "letters" ? null : Number,
        Letter = Notation == "letters" && Number is >= 1 and var place && place <= Numbers.Notation.Letters.Largest ? Numbers.Notation.Letters.Write(place) : null,
        Of = Size,
        Hedge = Hedge switch { "at-least" => SizeHedge.AtLeast, "at-most" => SizeHedge.AtMost, "about" => SizeHedge.About, _ => SizeHedge.None },
        NumberIsRoman = Notation == "roman",
        State = State,
        StateOf = StateOf,
    };

    private static int? AboveNothing(int? figure) => figure is >= 1 ? figure : null;

    private static string? KindOf(StatementKind kind) => kind switch
    {
        StatementKind.Numbered => "numbered",
        StatementKind.Proof => "proof",
        StatementKind.State => "state",
        StatementKind.Size => "size",
        StatementKind.Open => "open",
        StatementKind.Declined => Declined,
        _ => null,
    };

    internal static string? HedgeOf(SizeHedge hedge) => hedge switch
    {
        SizeHedge.AtLeast => "at-least",
        SizeHedge.AtMost => "at-most",
        SizeHedge.About => "about",
        _ => null,
    };
}
