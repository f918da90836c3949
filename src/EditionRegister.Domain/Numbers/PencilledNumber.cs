using System.Diagnostics.CodeAnalysis;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Numbers;

/// <summary>What the sheet says under the image: a kind of number, the number, and how many it says there are. Evidence, which may disagree with the number given.</summary>
public sealed record PencilledNumber
{
    /// <summary>Shown next to every field and in every message that asks for one.</summary>
    public const string Form = "12/50, IV/X, A/P 2/3 or B.A.T.";

    /// <exception cref="ArgumentException">No sheet can say this: a number without a notation, above its size or below one.</exception>
    public PencilledNumber(NumberingKind kind, Notation notation, int? number = null, int? of = null)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(notation);

        if ((number is null) != (notation == Notation.None) || (number is null && (of is not null || kind == NumberingKind.Numbered)))
        {
            throw new ArgumentException("A number needs a notation, and only a mark can stand without a number.", nameof(number));
        }

        if (number is { } n && (n < 1 || n > (of ?? n) || (of ?? n) > notation.Largest))
        {
            throw new ArgumentException("A number lies between one and the size beside it.", nameof(number));
        }

        Kind = kind;
        Notation = notation;
        Number = number;
        Of = of;
    }

    public NumberingKind Kind { get; }

    public Notation Notation { get; }

    /// <summary>Null where the sheet carries a mark alone.</summary>
    public int? Number { get; }

    /// <summary>How many the sheet says there are, or null where it says nothing.</summary>
    public int? Of { get; }

    /// <summary>What else the same pencil could mean: a single letter may be a roman numeral. Null where there is no doubt.</summary>
    public PencilledNumber? OtherReading
    {
        get
        {
            var other = Notation == Notation.Roman ? Notation.Letters : Notation == Notation.Letters ? Notation.Roman : null;

            return other is not null && Means(other, Number, out var number) && Means(other, Of ?? Number, out var of) && number <= of
                ? new PencilledNumber(Kind, other, number, Of is null ? null : of)
                : null;
        }
    }

    /// <summary>In the notation one expects, where the same pencil can mean that.</summary>
    public PencilledNumber AsExpected(Notation? expected) => expected is not null && Notation != expected && OtherReading is { } other && other.Notation == expected ? other : this;

    public static bool TryParse(string? text, [NotNullWhen(true)] out PencilledNumber? value) => TryParse(text, out value, out _);

    public static bool TryParse(string? text, [NotNullWhen(true)] out PencilledNumber? value, out PencilReading why) =>
        TryParse(text, expected: null, out value, out why);

    /// <summary>Reads a plain number with its mark before or behind it. Never guesses: what is not plain is not read.</summary>
    /// <param name="text">What is pencilled, and nothing else.</param>
    /// <param name="expected">The notation of the numbering it should belong to; settles whether C is a letter or a hundred.</param>
    /// <param name="value">The number, or null where it was not read.</param>
    /// <param name="why">Why it was not read.</param>
    public static bool TryParse(string? text, Notation? expected, [NotNullWhen(true)] out PencilledNumber? value, out PencilReading why) =>
        TryParse(text, expected, OwnWords.None, out value, out why);

    /// <summary>The same, where the register has kinds of its own.</summary>
    /// <param name="text">What is pencilled, and nothing else.</param>
    /// <param name="expected">The notation of the numbering it should belong to.</param>
    /// <param name="own">Kinds that the register made for itself.</param>
    /// <param name="value">The number, or null where it was not read.</param>
    /// <param name="why">Why it was not read.</param>
    public static bool TryParse(string? text, Notation? expected, OwnWords own, [NotNullWhen(true)] out PencilledNumber? value, out PencilReading why)
    {
        ArgumentNullException.ThrowIfNull(own);
        why = PencilledText.Read(text, expected, own.Kinds, out value);

        return value is not null;
    }

    /// <summary>As it is pencilled: <c>3/12</c>, <c>A/P II/V</c>, <c>H.C. C</c>, <c>B.A.T.</c>.</summary>
    public override string ToString()
    {
        var number = Number is { } n ? Notation.Write(n) + (Of is { } of ? "/" + Notation.Write(of) : "") : "";

        return Kind.Mark.Length == 0 ? number : number.Length == 0 ? Kind.Mark : $"{Kind.Mark} {number}";
    }

    private bool Means(Notation other, int? number, out int meaning)
    {
        var text = Notation.Write(number!.Value);
        meaning = 0;

        return text.Length == 1 && other.TryRead(text, out meaning);
    }
}
