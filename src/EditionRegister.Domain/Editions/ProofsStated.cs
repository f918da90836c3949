using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>Proofs stated beside an edition as the numbering they are taken for.</summary>
internal static class ProofsStated
{
    private const string Dashes = "-\u2010\u2011\u2012\u2013\u2014";
    private static readonly char[] Partings = [',', ';', '+', '&'];

    /// <summary>
    /// In the notation they are written in, as in 1-10 APs; a count alone, as in 10 artist's proofs, is taken for roman numerals: common practice, as a
    /// workshop's glossary has it (imoga.org: arabic for the edition, roman for all other categories). One bon à tirer bears its mark alone.
    /// </summary>
    /// <returns>Null where the register has no such kind.</returns>
    public static NumberingPlan? Plan(StatedProofs proofs, string text, OwnWords own)
    {
        if (SheetReader.KindOf(proofs.Series, own) is not { } kind || kind == NumberingKind.Numbered || proofs.Count < 1)
        {
            return null;
        }

        var written = Written(proofs, text, own) ?? (kind == NumberingKind.BonATirer && proofs.Count == 1 ? Notation.None : Notation.Roman);

        return new NumberingPlan(kind, proofs.Count <= written.Largest || written == Notation.None ? written : Notation.Arabic, proofs.Count, "stated");
    }

    /// <summary>The notation of a run from one to the count with these proofs behind it; null where no run is written.</summary>
    private static Notation? Written(StatedProofs proofs, string text, OwnWords own)
    {
        foreach (var at in Enumerable.Range(0, text.Length).Where(at => Dashes.Contains(text[at], StringComparison.Ordinal)))
        {
            var (first, last) = (WordBefore(text, at), WordBehind(text, at + 1));

            if (Notation.All.FirstOrDefault(one => one.TryRead(first, out var from) && from == 1 && one.TryRead(last.Word, out var to) && to == proofs.Count) is { } notation
                && SheetReader.Statement(UpToParting(text[last.End..]), own) is { Kind: StatementKind.Proof or StatementKind.Size } behind
                && (behind.Series == proofs.Series || behind.Beside.Any(one => one.Series == proofs.Series)))
            {
                return notation;
            }
        }

        return null;
    }

    private static string WordBefore(string text, int end)
    {
        var start = end;

        while (start > 0 && char.IsLetterOrDigit(text[start - 1]))
        {
            start--;
        }

        return text[start..end];
    }

    private static (string Word, int End) WordBehind(string text, int start)
    {
        var end = start;

        while (end < text.Length && char.IsLetterOrDigit(text[end]))
        {
            end++;
        }

        return (text[start..end], end);
    }

    private static string UpToParting(string text) => text.IndexOfAny(Partings) is >= 0 and var at ? text[..at] : text;
}
