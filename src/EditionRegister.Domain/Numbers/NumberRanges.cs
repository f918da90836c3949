using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Numbers;

/// <summary>Reads a list of impressions as people write it. A mark holds for its own part only; the order is kept.</summary>
public static class NumberRanges
{
    /// <summary>Shown next to every field and in every message that asks for impressions.</summary>
    public const string Form = "3-7, 9, A/P I-III, 7KQ4-M2X3";

    /// <summary>The most numbers one range may name.</summary>
    public const int Longest = 9_999;

    private static readonly char[] Dashes = ['-', '\u2010', '\u2011', '\u2012', '\u2013'];

    /// <exception cref="RefusedException">A part is empty, unreadable, reversed, too long, or could be two things; the sentence names it.</exception>
    public static IReadOnlyList<NumberRange> Read(string? text) => Read(text, OwnWords.None);

    /// <summary>The same, where the register has kinds of its own.</summary>
    /// <exception cref="RefusedException">A part is empty, unreadable, reversed, too long, or could be two things; the sentence names it.</exception>
    public static IReadOnlyList<NumberRange> Read(string? text, OwnWords own)
    {
        ArgumentNullException.ThrowIfNull(own);

        if (string.IsNullOrWhiteSpace(text))
        {
            throw NumberRangeRefusals.Nothing();
        }

        return [.. text.Split(',').Select(part => ReadNamed(part.Trim(), text, own.Kinds))];
    }

    /// <summary>
    /// Whether a list can be one, before it is known which kinds a register made for itself: what is not read may bear a mark of its own.
    /// </summary>
    /// <exception cref="RefusedException">A part can be read with no mark whatever.</exception>
    public static void Plausible(string? text)
    {
        try
        {
            Read(text);
        }
        catch (RefusedException refusal) when (refusal.Name == "range-unreadable" && IsRead(string.Join(',', text!.Split(',').Select(OwnMark.Without))))
        {
            // Which marks there are is known once the register is open; then it is read again.
        }
    }

    private static bool IsRead(string text)
    {
        try
        {
            return Read(text).Count > 0;
        }
        catch (RefusedException)
        {
            return false;
        }
    }

    // deluxe: I-X. No number, mark or code has a colon in it.
    private static NumberRange ReadNamed(string part, string whole, IReadOnlyList<NumberingKind> own)
    {
        var at = part.IndexOf(':', StringComparison.Ordinal);

        return at < 1 || ReadPart(part[(at + 1)..].Trim(), whole, own) is not { Code: null } range ? ReadPart(part, whole, own) : range.Named(part[..at].Trim());
    }

    private static NumberRange ReadPart(string part, string whole, IReadOnlyList<NumberingKind> own)
    {
        if (part.Length == 0)
        {
            throw NumberRangeRefusals.EmptyPart(whole);
        }

        var run = ReadRun(part, own);

        if (RegisterCode.TryParse(part, out var code))
        {
            return run is null ? NumberRange.OfCode(code) : throw NumberRangeRefusals.RangeOrCode(part, code);
        }

        if (run is { From: { } from, To: { } to })
        {
            return from > to ? throw NumberRangeRefusals.Reversed(part)
                : to - from >= Longest ? throw NumberRangeRefusals.TooLong(part)
                : run;
        }

        return PencilledNumber.TryParse(part, Notation.Arabic, new OwnWords(own, []), out var number, out var why) ? NumberRange.OfOne(number)
            : why == PencilReading.OutOfRange ? throw NumberRangeRefusals.Impossible(part)
            : throw NumberRangeRefusals.Unreadable(part);
    }

    private static NumberRange? ReadRun(string part, IReadOnlyList<NumberingKind> own)
    {
        var (kind, numbers) = PencilledMark.Split(part, own);

        if (numbers.Split(Dashes) is not [var first, var last])
        {
            return null;
        }

        var marked = kind == NumberingKind.Numbered ? null : kind;
        var readings = InOrderOfLikelihood(first.Trim(), last.Trim())
            .Select(notation => RunIn(notation, marked, first.Trim(), last.Trim()))
            .OfType<NumberRange>()
            .ToList();

        return readings.Find(run => run.From <= run.To) ?? readings.FirstOrDefault();
    }

    // C-F are letters: nobody counts proofs from a hundred to five hundred. I-V are numerals.
    private static Notation[] InOrderOfLikelihood(string first, string last) =>
        IsLetter(first) && IsLetter(last)
            ? [Notation.Arabic, Notation.Letters, Notation.Roman]
            : [Notation.Arabic, Notation.Roman, Notation.Letters];

    private static bool IsLetter(string text) => text is [not ('I' or 'V' or 'X' or 'i' or 'v' or 'x')];

    private static NumberRange? RunIn(Notation notation, NumberingKind? kind, string first, string last) =>
        (notation != Notation.Letters || (first.Length == 1 && last.Length == 1))
        && notation.TryRead(first, out var from)
        && notation.TryRead(last, out var to)
            ? NumberRange.OfRun(kind, notation, from, to)
            : null;
}
