using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>A numbering as it is to be declared: 1-12, A/P I-II, B.A.T. or open.</summary>
public sealed record NumberingPlan(NumberingKind Kind, Notation Notation, int? Size, string SizeState)
{
    /// <summary>Shown where a numbering is asked for.</summary>
    public const string Form = "1-12, A/P I-II, H.C. A-C, B.A.T. or open";

    /// <summary>The most characters a name may have.</summary>
    public const int LongestName = 40;

    /// <summary>What sets it apart from another of its kind: deluxe, on other paper; null where it needs none.</summary>
    public string? Name { get; init; }

    /// <summary>at-least, at-most or about, where the size is not sure; then <see cref="Size"/> is null and its state unknown.</summary>
    public string? Hedge { get; init; }

    /// <summary>So many at least, at most or about.</summary>
    public int? HedgedSize { get; init; }

    /// <exception cref="RefusedException">numbering-not-read or numbering-from-one.</exception>
    public static NumberingPlan Read(string text) => Read(text, OwnWords.None);

    /// <summary>The same, where the register has kinds of its own.</summary>
    /// <exception cref="RefusedException">numbering-not-read or numbering-from-one.</exception>
    public static NumberingPlan Read(string text, OwnWords own)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(own);
        var at = text.IndexOf(':', StringComparison.Ordinal);

        return at < 0 ? Unnamed(text, own)
            : text[..at].Trim() is { Length: > 0 and <= LongestName } name ? Unnamed(text[(at + 1)..], own) with { Name = name }
            : throw EditionRefusals.NumberingNotRead(text);
    }

    /// <summary>Whether a text can be a numbering, before it is known which kinds a register made for itself.</summary>
    /// <exception cref="RefusedException">It can be read with no mark whatever.</exception>
    public static void Plausible(string text)
    {
        try
        {
            Read(text);
        }
        catch (RefusedException refusal) when (refusal.Name == "numbering-not-read")
        {
            // Which marks there are is known once the register is open; then it is read again.
            var unmarked = OwnMark.Without(text);

            if (unmarked == text.Trim() || text.Contains(',', StringComparison.Ordinal))
            {
                throw;
            }

            Read(unmarked);
        }
    }

    private static NumberingPlan Unnamed(string text, OwnWords own)
    {
        if (text.Trim().Equals("open", StringComparison.OrdinalIgnoreCase))
        {
            return new NumberingPlan(NumberingKind.Numbered, Notation.Arabic, null, "open");
        }

        var range = OneRange(text, own) ?? throw EditionRefusals.NumberingNotRead(text);
        var kind = range.Kind ?? NumberingKind.Numbered;

        return range.From is null ? new NumberingPlan(kind, Notation.None, 1, "stated")
            : range.From == 1 ? new NumberingPlan(kind, range.Notation!, range.To, "stated")
            : throw EditionRefusals.NumberingFromOne(text);
    }

    public override string ToString() => (Name is null ? "" : Name + ": ") + Written();

    private string Written() => Size is { } size && Notation != Notation.None
        ? $"{Kind.Mark} {Notation.Write(1)}-{Notation.Write(size)}".Trim()
        : Kind.Mark.Length > 0 ? Kind.Mark
        : SizeState == "unknown" ? $"edition {SizeNotSure.Of(Hedge, HedgedSize) ?? "of a size not known"}"
        : "open";

    /// <summary>Null for a list, a code, and what is no range at all: each is no numbering, whatever else is wrong with it.</summary>
    private static NumberRange? OneRange(string text, OwnWords own)
    {
        try
        {
            return NumberRanges.Read(text, own) is [{ Code: null, Name: null } range] ? range : null;
        }
        catch (RefusedException)
        {
            return null;
        }
    }
}
