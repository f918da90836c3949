using EditionRegister.Domain.Numbers;

namespace EditionRegister.Domain.Editions;

/// <summary>One run of numbers inside an edition, never mixed with another. The words are as found; kind and notation are null where damage made them unreadable.</summary>
/// <param name="Id">Its row.</param>
/// <param name="V">The entry that last wrote it.</param>
/// <param name="Ordinal">Its place in the edition, from one.</param>
/// <param name="KindWord">The kind's word.</param>
/// <param name="NotationWord">The notation's word.</param>
/// <param name="Size">How many numbers it has.</param>
/// <param name="SizeState">stated, open or unknown.</param>
/// <param name="Numbers">Its places.</param>
/// <param name="OwnKind">The kind, where it is one of the register's own.</param>
public sealed record Numbering(
    long Id,
    long V,
    int Ordinal,
    string KindWord,
    string NotationWord,
    int? Size,
    string SizeState,
    IReadOnlyList<NumberSlot> Numbers,
    NumberingKind? OwnKind = null)
{
    public NumberingKind? Kind { get; } = NumberingKind.TryFind(KindWord, out var kind) ? kind : OwnKind;

    /// <summary>What sets it apart from another of its kind: deluxe, on other paper.</summary>
    public string? Name { get; init; }

    /// <summary>at-least, at-most or about, where the size is not sure; then <see cref="Size"/> is null.</summary>
    public string? Hedge { get; init; }

    /// <summary>So many at least, at most or about.</summary>
    public int? HedgedSize { get; init; }

    /// <summary>of at least 49; null where the size is sure, or nobody said anything of it.</summary>
    public string? NotSure => Size is null ? SizeNotSure.Of(Hedge, HedgedSize) : null;

    public Notation? Notation { get; } = Notation.TryFind(NotationWord, out var notation) ? notation : null;

    public bool IsOpen => SizeState == "open";

    /// <summary>The number as it is to be pencilled: <c>3/12</c>, <c>A/P II/V</c>, <c>B.A.T.</c>, or null where it cannot be spelled.</summary>
    public string? Spell(int? number)
    {
        // A numbered edition without numerals is damage: no pencil can write it.
        if (Kind is null || Notation is null || (Kind == NumberingKind.Numbered && Notation == Notation.None))
        {
            return null;
        }

        if (Notation == Notation.None)
        {
            return new PencilledNumber(Kind, Notation).ToString();
        }

        return number is { } n && n >= 1 && n <= (Size ?? n) && (Size ?? n) <= Notation.Largest
            ? new PencilledNumber(Kind, Notation, n, Size).ToString()
            : null;
    }

    /// <summary>The number as a person types it to name it: <c>3</c>, <c>A/P II</c>, <c>deluxe: I</c>; null where it cannot be written.</summary>
    public string? Typed(int number) =>
        Kind is null || Notation is null || (Notation != Notation.None && (number < 1 || number > Notation.Largest)) ? null
        : $"{(Name is null ? "" : Name + ": ")}{$"{Kind.Mark} {(Notation == Notation.None ? "" : Notation.Write(number))}".Trim()}";

    /// <summary>"1/12 to 12/12", "A/P I/II and A/P II/II", "B.A.T.", "open"; with its name behind it where it has one: "I/X to X/X (deluxe)".</summary>
    public string Span => Name is null ? Run : $"{Run} ({Name})";

    private string Run => Size switch
    {
        null => $"{Kind?.Name ?? KindWord}, {(IsOpen ? "open" : NotSure ?? "size unknown")}",
        1 => Spell(1) ?? KindWord,
        { } size => $"{Spell(1) ?? KindWord} to {Spell(size) ?? size.ToString(System.Globalization.CultureInfo.InvariantCulture)}",
    };
}
