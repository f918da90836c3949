using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Dates;

namespace EditionRegister.UseCases.Wording;

/// <summary>What is said of condition reports, alike by commands and rooms.</summary>
public static class ConditionSaid
{
    public const string Caution = "This is what somebody saw, not a conservator's opinion. Do not clean, press or mend a sheet yourself; ask a paper conservator where something spreads, sticks or flakes.";

    /// <summary>The same, where there is little room.</summary>
    public const string CautionInShort = "What somebody saw, not a conservator's opinion; ask one where something spreads, sticks or flakes.";

    /// <param name="sheets">How many.</param>
    /// <param name="occasion">The occasion's word.</param>
    /// <param name="day">When they were examined.</param>
    /// <param name="summary">In a sentence, or null.</param>
    /// <param name="remarks">How many things were remarked on each.</param>
    public static string Reported(int sheets, string occasion, RecordedDate day, string? summary, int remarks)
    {
        var remarked = remarks == 0 ? null : $"{Counted.Of(remarks, "remark")}{(sheets > 1 ? " on each" : "")}";

        return $"{Counted.Sheets(sheets)} examined {Called.Plain(occasion)}, {day}: {string.Join("; ", new[] { summary?.TrimEnd('.'), remarked }.OfType<string>())}.";
    }

    public static string TermAdded(string word, string name) => $"{name} is a term of this register from now on: {word}.";

    /// <summary>What to do at once about terms among these that spread or harm; nothing where there are none.</summary>
    public static IEnumerable<string> Cares(IEnumerable<string> terms) => terms.Distinct(StringComparer.Ordinal).Select(term => ConditionTerm.Of(term)?.Care).OfType<string>();
}
