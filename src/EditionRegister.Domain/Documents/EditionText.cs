using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Documents;

/// <summary>An edition's size, proofs and total as certificates and statements say them; what counts in which is the kind's to say.</summary>
internal static class EditionText
{
    public static string Size(Work work, Edition? edition)
    {
        if (edition is null)
        {
            return CertificateFacts.NotKnown;
        }

        var totals = EditionTotals.Of(work, edition);

        return Declared(edition, totals) + (totals is { Size: not null, SizeSpan: { Length: > 0 } span } ? $", numbered {span}" : "") + NeverPrinted(edition);
    }

    private static string Declared(Edition edition, EditionTotals totals) => (edition.Kind, totals.Size) switch
    {
        ("limited", { } size) => $"limited to {Impressions(size)}",
        ("limited", null) => $"limited, to how many impressions is {CertificateFacts.NotKnown}",
        ("varied", { } size) => $"varied edition of {Impressions(size)}",
        ("varied", null) => $"varied edition, of how many impressions is {CertificateFacts.NotKnown}",
        ("unique", _) => "unique impression",
        ("open", _) => "open, not limited in number",
        (_, { } size) => $"{Impressions(size)}, whether limited is {CertificateFacts.NotKnown}",
        _ => CertificateFacts.NotKnown,
    };

    private static string NeverPrinted(Edition edition) => string.Concat(
        from numbering in edition.Numberings
        where numbering.Kind is { InSize: true }
        select Fated(numbering, "never-printed", "was never printed", "were never printed") + Fated(numbering, "void", "is void", "are void"));

    private static string Fated(Numbering numbering, string fate, string one, string many)
    {
        var numbers = numbering.Numbers.Where(number => number.Fate == fate).ToList();

        return numbers.Count == 0 ? "" : $"; {InWords.Numbers(numbering, numbers.Select(number => number.Ordinal))} {(numbers.Count == 1 ? one : many)}";
    }

    public static string Proofs(Work work, Edition? edition)
    {
        if (edition is null)
        {
            return CertificateFacts.NotKnown;
        }

        var proofs = EditionTotals.Of(work, edition).Proofs;

        return proofs.Count > 0 ? $"{string.Join("; ", proofs.Select(Counted))}; outside the edition"
            : edition.IsWhole ? "none"
            : CertificateFacts.NotKnown;
    }

    public static string Total(Work work, Edition? edition)
    {
        if (edition is null || EditionTotals.Of(work, edition) is not { Total: { } total } totals)
        {
            return CertificateFacts.NotKnown;
        }

        var printed = totals.NeverPrinted == 0
            ? $"{Impressions(total)} in all"
            : $"{Impressions(total - totals.NeverPrinted)} in all, as {InWords.Figure(totals.NeverPrinted)} of {InWords.Count(total, "number", "numbers")} {(totals.NeverPrinted == 1 ? "was" : "were")} never printed";

        return totals.SheetsPulled.Count == 0 ? printed : $"{printed}, not counting {InWords.List([.. totals.SheetsPulled.Select(kind => Named(kind.Kind, kind.Count))])}";
    }

    private static string Counted(CountedKind proofs) =>
        proofs.Count is null ? Named(proofs.Kind, null) : $"{Named(proofs.Kind, proofs.Count)}, {proofs.Span}";

    /// <summary>2 artist's proofs; 1 bon à tirer; trial proofs, how many is not known.</summary>
    public static string Named(NumberingKind kind, long? count) => count is { } n
        ? InWords.Count(n, kind.Name, kind.PluralName)
        : $"{kind.PluralName}, how many is {CertificateFacts.NotKnown}";

    private static string Impressions(long count) => InWords.Count(count, "impression", "impressions");
}
