using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Facts;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Conditions;

/// <summary>Adds a word of the register's own for what can be the matter with a sheet.</summary>
public sealed class RecordConditionTerm(RegisterStore store)
{
    /// <param name="word">Permanent, in kebab case.</param>
    /// <param name="name">As screens and reports show it; the word without hyphens when not said.</param>
    /// <exception cref="Domain.RefusedException">condition-term-known or condition-term-misformed.</exception>
    public void Run(string word, string? name = null) => store.Write("record-condition-term", writing =>
    {
        if (!IsFormed(word))
        {
            throw ConditionRefusals.TermMisformed(word);
        }

        if (writing.Read.ConditionTerms().Any(term => term.Word == word))
        {
            throw ConditionRefusals.TermKnownAlready(word);
        }

        var deed = writing.On(Root.Register);
        deed.Set("condition_term", deed.NewId("condition_term"), ("word", word), ("name", name ?? word.Replace('-', ' ')));

        return true;
    });

    private static bool IsFormed(string word) =>
        word.Length > 0 && word[0] != '-' && word[^1] != '-' && !word.Contains("--", StringComparison.Ordinal) && word.All(c => c is (>= 'a' and <= 'z') or (>= '0' and <= '9') or '-');
}
