using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Text;

namespace EditionRegister.Store.Logbook;

/// <summary>Works derived facts out of the facts they stand on. Today there is one kind: folded text for searching.</summary>
internal static class DerivedFacts
{
    public static FactValue Of(Fact derived, Func<string, string?> source)
    {
        var parts = derived.Sources.Select(source).Where(part => !string.IsNullOrEmpty(part)).ToList();

        return parts.Count == 0 ? FactValue.Null : SearchText.Fold(string.Join(' ', parts));
    }
}
