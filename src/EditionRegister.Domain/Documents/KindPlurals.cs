using EditionRegister.Domain.Numbers;

namespace EditionRegister.Domain.Documents;

/// <summary>Kinds of numbering in the plural, where the trade's French does not take an English s.</summary>
public static class KindPlurals
{
    extension(NumberingKind kind)
    {
        public string PluralName => kind.Word switch
        {
            "hors-commerce" => "hors commerce",
            "bon-a-tirer" => "bons à tirer",
            _ when kind.IsOwn => Plural(kind.Name),
            _ => kind.Name + "s",
        };
    }

    private static string Plural(string name) =>
        name is [.., not ('a' or 'e' or 'i' or 'o' or 'u'), 'y'] ? name[..^1] + "ies"
        : name.EndsWith('s') || name.EndsWith('x') || name.EndsWith("ch", StringComparison.Ordinal) || name.EndsWith("sh", StringComparison.Ordinal) ? name + "es"
        : name + "s";
}
