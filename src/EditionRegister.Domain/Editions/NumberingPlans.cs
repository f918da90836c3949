using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>The numberings of an edition as somebody says them: run by run (1-12, A/P I-II, B.A.T.), in words (edition of 75 plus 10 artist's proofs), or both.</summary>
/// <param name="Plans">In the order in which they are said, the edition itself first where it is said in words.</param>
/// <param name="Stated">What was said in words; null where every numbering is written out.</param>
public sealed record NumberingPlans(IReadOnlyList<NumberingPlan> Plans, StatedEdition? Stated)
{
    /// <summary>Shown where the numberings of an edition are asked for.</summary>
    public const string Form = "1-12, A/P I-II, H.C. A-C, B.A.T., open, or edition of 75 plus 10 artist's proofs";

    private static readonly char[] Partings = [',', ';'];

    /// <exception cref="RefusedException">numbering-not-read, numbering-from-one or edition-words-not-read.</exception>
    public static NumberingPlans Read(string text, OwnWords own)
    {
        ArgumentNullException.ThrowIfNull(text);

        if (WrittenOut(text, own) is { } one)
        {
            return new NumberingPlans([one], null);
        }

        var parts = text.Split(Partings, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(part => (Text: part, Plan: IsRun(part) ? WrittenOut(part, own) : null)).ToList();
        var words = string.Join(", ", parts.Where(part => part.Plan is null).Select(part => part.Text));
        var runs = parts.Select(part => part.Plan).OfType<NumberingPlan>().ToList();

        return words.Length == 0 && runs.Count > 0 ? new NumberingPlans(runs, null) : InWords(text, words, runs, own);
    }

    /// <summary>What was said in words, as written; null where every numbering is written out.</summary>
    public string? Statement => Stated?.Written;

    /// <summary>What several texts say in words, as written; null where none does.</summary>
    public static string? StatementOf(IEnumerable<NumberingPlans> said) => said.Select(one => one.Statement).OfType<string>().ToList() is { Count: > 0 } words ? string.Join("; ", words) : null;

    /// <summary>Whether a text can be numberings, before it is known which kinds a register made for itself.</summary>
    /// <exception cref="RefusedException">It can be read with no mark whatever.</exception>
    public static void Plausible(string text)
    {
        ArgumentNullException.ThrowIfNull(text);

        if (StatedEdition.Read(text, OwnWords.None) is { Words.Kind: Reading.Inscriptions.StatementKind.Size or Reading.Inscriptions.StatementKind.Open })
        {
            return;
        }

        foreach (var part in text.Split(Partings, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).DefaultIfEmpty(text))
        {
            NumberingPlan.Plausible(part);
        }
    }

    private static NumberingPlans InWords(string text, string words, List<NumberingPlan> runs, OwnWords own)
    {
        var stated = StatedEdition.Read(words, own);

        return stated.Words is null or { Kind: Reading.Inscriptions.StatementKind.None } ? throw EditionRefusals.NumberingNotRead(text)
            : stated.WhyNot is { } reason ? throw EditionRefusals.WordsNotRead(text, reason)
            : stated.WithoutKind is { } unknown ? throw EditionRefusals.WordsNotRead(text, $"the register has no kind of numbering for {unknown}")
            : stated.Words?.Left.FirstOrDefault(piece => piece.Any(char.IsAsciiDigit)) is { } left ? throw EditionRefusals.WordsNotRead(text, $"“{left}” is left over")
            : stated.Plans.Count == 0 ? throw EditionRefusals.WordsNotRead(text, "it does not say how many there are")
            : new NumberingPlans([.. stated.Plans, .. runs], stated with { Written = text.Trim() });
    }

    /// <summary>1-12, A/P I-II or B.A.T.; in a list, 1 BAT is a count and no number.</summary>
    private static bool IsRun(string part) => part.Contains(':', StringComparison.Ordinal) || !part.Any(char.IsAsciiDigit) || part.AsSpan().ContainsAny("-\u2010\u2011\u2012\u2013");

    private static NumberingPlan? WrittenOut(string text, OwnWords own)
    {
        try
        {
            return NumberingPlan.Read(text, own);
        }
        catch (RefusedException refusal) when (refusal.Name == "numbering-not-read")
        {
            return null;
        }
    }
}
