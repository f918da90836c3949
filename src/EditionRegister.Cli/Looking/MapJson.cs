using System.Text.Json;
using EditionRegister.Domain.Editions;

namespace EditionRegister.Cli;

/// <summary>The map of an edition, for machines.</summary>
internal static class MapJson
{
    public static void Write(Utf8JsonWriter json, NumberMap map)
    {
        json.WriteNumber("edition", map.Edition.Id);
        json.WriteString("heading", map.Heading);
        json.Each("numberings", map.Numberings, numbering =>
        {
            json.WriteString("kind", numbering.Numbering.KindWord);
            json.WriteString("heading", numbering.Heading);
            json.WriteString("span", numbering.Span);
            json.Each("cells", numbering.Cells, cell => Cell(json, cell));
        });
        json.Each("beside", map.Beside, cell => Cell(json, cell));
        json.Each("division", map.Division, share =>
        {
            json.WriteString("numbers", share.Numbers);
            json.WriteString("to", share.Person);
            json.WriteString("now", share.Now);
            json.Date("agreed", share.Agreed.Agreed);
        });
        json.Each("totals", map.Totals, total =>
        {
            json.WriteString("label", total.Label);
            json.WriteString("value", total.Value);
        });
        json.Each("legend", map.Legend, letter =>
        {
            json.WriteString("letter", $"{letter.Letter}");
            json.WriteString("meaning", letter.Meaning);
        });
    }

    private static void Cell(Utf8JsonWriter json, MapCell cell)
    {
        json.Whole("ordinal", cell.Ordinal);
        json.WriteString("number", cell.Spelled);
        json.WriteString("letter", $"{cell.Letter}");
        json.WriteString("code", cell.Sheet?.ShownCode);
        json.WriteString("where", cell.Where);
    }
}
