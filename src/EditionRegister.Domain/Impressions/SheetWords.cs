using EditionRegister.Domain.Facts;

namespace EditionRegister.Domain.Impressions;

/// <summary>What is said of single sheets in words of one's own: how one differs from the others, and to whom a copy is dedicated. Null takes it back.</summary>
public static class SheetWords
{
    /// <summary>The most characters either may have: both are printed on papers.</summary>
    public const int Longest = 120;

    /// <exception cref="RefusedException">variant-too-long.</exception>
    public static void Vary(IReadOnlyList<Impression> sheets, string? variant, Deed deed) => Say(sheets, "variant", variant, SheetWordRefusals.VariantTooLong, deed);

    /// <exception cref="RefusedException">dedication-too-long.</exception>
    public static void Dedicate(IReadOnlyList<Impression> sheets, string? dedication, Deed deed) => Say(sheets, "dedication", dedication, SheetWordRefusals.DedicationTooLong, deed);

    private static void Say(IReadOnlyList<Impression> sheets, string fact, string? words, Func<RefusedException> tooLong, Deed deed)
    {
        ArgumentNullException.ThrowIfNull(sheets);
        ArgumentNullException.ThrowIfNull(deed);
        var said = string.IsNullOrWhiteSpace(words) ? null : words.Trim();

        if (said is { Length: > Longest })
        {
            throw tooLong();
        }

        foreach (var sheet in sheets)
        {
            deed.Set("impression", sheet.Id, (fact, said));
        }
    }
}
