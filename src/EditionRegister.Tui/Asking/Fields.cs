using System.Globalization;
using EditionRegister.Domain;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Prices;
using EditionRegister.Domain.Reading.Papers;
using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Reading.Techniques;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Text;
using EditionRegister.Domain.Works;

namespace EditionRegister.Tui.Asking;

/// <summary>The fields that many forms have, each with the form of a right answer and what is wrong with another.</summary>
internal static class Fields
{
    private const int MostKnown = 6;
    private const decimal Hundredths = 100m;

    /// <summary>A date in EDTF or in words.</summary>
    public static Field Date(string label, string given = "") => new(label, given)
    {
        Form = $"a date such as {RecordedDate.Form}",
        // What is not read would be kept without an earliest and a latest day, and a slip of the finger with it.
        Wrong = typed => RecordedDate.TryRead(typed, out _) ? null : $"“{typed}” is no date that can be read: write {RecordedDate.Form}.{(RecordedDate.WhyNot(typed) is { } why ? $" {why}" : "")}",
        Reads = typed => RecordedDate.TryRead(typed, out var date) ? date.InOtherWords : null,
    };

    public static Field Today(string label, DateOnly today) => Date(label, today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    /// <summary>Free text, with what the register knows of the kind offered as it is typed.</summary>
    public static Field Known(string label, IReadOnlyList<string> known, string form = "", string given = "") => new(label, given)
    {
        Form = form,
        Known = typed => Matching(known, typed),
    };

    /// <summary>How something is printed, in words that are kept as written and read.</summary>
    public static Field Technique(string label, IReadOnlyList<string> known, OwnWords own, string form, string given = "") => new(label, given)
    {
        Form = form,
        Known = typed => Matching(known, typed),
        Reads = typed => TechniqueAsRead.Of(typed, own.Techniques),
    };

    public static Field Amount(string label, string currency, string given = "") => new(label, given)
    {
        Form = $"{currency}: {Money.Form}",
        Wrong = typed => Money.TryParse(typed, currency, out var money) && money.MinorUnits >= 0 ? null : $"“{typed}” is no amount in {currency}: write {Money.Form}.",
    };

    /// <summary>A share in per cent, from 0 to 100.</summary>
    public static Field Share(string label, string given = "") => new(label, given)
    {
        Form = "per cent, such as 40 or 33.33",
        Wrong = typed => Hundredth(typed) is null ? $"“{typed}” is no share: write per cent from 0 to 100, such as 40 or 33.33." : null,
    };

    public static Field Count(string label, string given = "", int least = 0) => new(label, given)
    {
        Form = "a whole number, such as 12",
        Wrong = typed => int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count >= least
            ? null
            : $"“{typed}” is no whole number{(least > 0 ? string.Create(CultureInfo.InvariantCulture, $" from {least}") : "")}.",
    };

    /// <summary>A sheet's number as it stands there: plain, or in words that are read while they are typed.</summary>
    public static Field SheetNumber(string label, OwnWords own, string given = "", string form = "as it stands on the sheet, such as 3/12 or A/P II/V") => new(label, given)
    {
        Form = form,
        Reads = typed => InscriptionSaid.OfNumber(typed, own),
    };

    /// <summary>Anything else that stands on a sheet.</summary>
    public static Field Inscription(string label, OwnWords own, string form) => new(label) { Form = form, Reads = typed => InscriptionSaid.OfTyped(typed, own) };

    /// <summary>An edition in somebody's words.</summary>
    public static Field Statement(string label, OwnWords own) => new(label)
    {
        Form = "as a catalogue says it: edition of 75 plus 10 artist's proofs; may stay empty",
        Reads = typed => InscriptionSaid.OfEdition(typed, own),
    };

    /// <summary>A size in millimetres, or in words.</summary>
    public static Field Size(string label, SizePart part, string given = "") => new(label, given)
    {
        Form = RecordedSize.Form,
        Wrong = typed => RecordedSize.TryRead(typed, part, out _, out var whyNot) ? null : $"“{typed}” was not read. {whyNot}",
        Reads = typed => RecordedSize.TryRead(typed, part, out var size, out _) ? size.InOtherWords : null,
    };

    /// <summary>A paper in words, with those the register knows offered as it is typed.</summary>
    public static Field Paper(string label, IReadOnlyList<string> known, string form, string given = "") => new(label, given)
    {
        Form = form,
        Known = typed => Matching(known, typed),
        Reads = PaperAsRead.Of,
    };

    /// <summary>Numbers or codes as people list them.</summary>
    public static Field Ranges(string label, string given = "", string form = "such as 3-7, 9, A/P I-III") => new(label, given)
    {
        Form = form,
        Wrong = typed => Refused(() => NumberRanges.Plausible(typed)),
    };

    /// <summary>The answer as minor units; null where there is none.</summary>
    public static long? MinorUnits(string? answer, string currency) => Money.TryParse(answer, currency, out var money) ? money.MinorUnits : null;

    /// <summary>The answer in hundredths of a per cent; null where there is none.</summary>
    public static int? Hundredth(string? answer) =>
        decimal.TryParse(answer, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent) && percent is >= 0 and <= 100 && decimal.IsInteger(percent * Hundredths)
            ? (int)(percent * Hundredths)
            : null;

    public static int? Whole(string? answer) => int.TryParse(answer, NumberStyles.None, CultureInfo.InvariantCulture, out var count) ? count : null;

    public static RecordedDate? DateOf(string? answer) => answer is null ? null : RecordedDate.Read(answer);

    public static RecordedSize? SizeOf(string? answer, SizePart part) => RecordedSize.TryRead(answer, part, out var size, out _) ? size : null;

    /// <summary>What a type of the register's own says is wrong with a text, or null.</summary>
    public static string? Refused(Action read)
    {
        try
        {
            read();
            return null;
        }
        catch (RefusedException refusal)
        {
            return refusal.Message;
        }
    }

    /// <summary>What is known and holds what was typed, case and accents ignored; what begins so comes first.</summary>
    public static IReadOnlyList<string> Matching(IReadOnlyList<string> known, string typed)
    {
        var folded = SearchText.Fold(typed.Trim());
        var holding = known.Where(one => SearchText.Fold(one).Contains(folded, StringComparison.Ordinal) && one != typed);

        return [.. holding.OrderBy(one => !SearchText.Fold(one).StartsWith(folded, StringComparison.Ordinal)).Take(MostKnown)];
    }
}
