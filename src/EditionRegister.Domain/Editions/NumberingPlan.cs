using EditionRegister.Domain.Numbers;

namespace EditionRegister.Domain.Editions;

/// <summary>A numbering as it is to be declared: 1-12, A/P I-II, B.A.T. or open.</summary>
public sealed record NumberingPlan(NumberingKind Kind, Notation Notation, int? Size, string SizeState)
{
    /// <summary>Shown where a numbering is asked for.</summary>
    public const string Form = "1-12, A/P I-II, H.C. A-C, B.A.T. or open";

    /// <exception cref="RefusedException">numbering-not-read or numbering-from-one.</exception>
    public static NumberingPlan Read(string text)
    {
        if (text.Trim().Equals("open", StringComparison.OrdinalIgnoreCase))
        {
            return new NumberingPlan(NumberingKind.Numbered, Notation.Arabic, null, "open");
        }

        var range = OneRange(text) ?? throw EditionRefusals.NumberingNotRead(text);
        var kind = range.Kind ?? NumberingKind.Numbered;

        return range.From is null ? new NumberingPlan(kind, Notation.None, 1, "stated")
            : range.From == 1 ? new NumberingPlan(kind, range.Notation!, range.To, "stated")
            : throw EditionRefusals.NumberingFromOne(text);
    }

    public override string ToString() => Size is { } size && Notation != Notation.None
        ? $"{Kind.Mark} {Notation.Write(1)}-{Notation.Write(size)}".Trim()
        : Kind.Mark.Length == 0 ? "open" : Kind.Mark;

    /// <summary>Null for a list, a code, and what is no range at all: each is no numbering, whatever else is wrong with it.</summary>
    private static NumberRange? OneRange(string text)
    {
        try
        {
            return NumberRanges.Read(text) is [{ Code: null } range] ? range : null;
        }
        catch (RefusedException)
        {
            return null;
        }
    }
}
