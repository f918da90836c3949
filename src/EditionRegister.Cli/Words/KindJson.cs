using System.Text.Json;
using EditionRegister.Domain.Numbers;

namespace EditionRegister.Cli;

/// <summary>A kind of numbering, for machines.</summary>
internal static class KindJson
{
    public static void Write(Utf8JsonWriter json, NumberingKind kind)
    {
        json.WriteString("kind", kind.Word);
        json.WriteString("mark", kind.Mark);
        json.WriteString("name", kind.Name);
        json.WriteBoolean("in_size", kind.InSize);
        json.WriteBoolean("in_total", kind.InTotal);
        json.WriteBoolean("for_sale", kind.ForSale);
        json.WriteBoolean("own", kind.IsOwn);
    }
}
