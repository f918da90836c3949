using System.Text.Json;
using EditionRegister.Domain.Editions;

namespace EditionRegister.Cli;

/// <summary>Editions, for machines.</summary>
internal static class EditionJson
{
    public static void Write(Utf8JsonWriter json, Edition edition)
    {
        json.WriteNumber("edition", edition.Id);
        json.WriteString("kind", edition.Kind);
        json.WriteString("extent", edition.Extent);
        json.Whole("intended", edition.Intended);
        json.Date("declared", edition.Declared);
        json.WriteString("closed", edition.Closed);
        json.Date("closed_on", edition.ClosedOn);
        json.Whole("size", edition.Size);
        json.Whole("total", edition.Total);
        json.WriteString("printing", edition.Printing);
        json.WriteString("rank", edition.Rank);
        json.WriteString("fell_short", edition.FellShort);
        json.WriteString("note", edition.Note);
        json.WriteString("statement", edition.Statement);
        json.Each("numberings", edition.Numberings, numbering =>
        {
            json.WriteString("kind", numbering.KindWord);
            json.WriteString("notation", numbering.NotationWord);
            json.WriteString("name", numbering.Name);
            json.Whole("size", numbering.Size);
            json.WriteString("size_state", numbering.SizeState);
            json.WriteString("hedge", numbering.Hedge);
            json.Whole("hedged_size", numbering.HedgedSize);
            json.WriteString("span", numbering.Span);
        });
    }
}
