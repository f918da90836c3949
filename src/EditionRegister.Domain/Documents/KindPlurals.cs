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
            _ => kind.Name + "s",
        };
    }
}
