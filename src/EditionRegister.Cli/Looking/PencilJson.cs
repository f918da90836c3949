using System.Text.Json;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Cli;

/// <summary>What stands on a sheet with what was read in it, for machines: null where nothing was.</summary>
internal static class PencilJson
{
    public static void Write(Utf8JsonWriter json, Impression sheet)
    {
        if (sheet.Pencilled is null)
        {
            json.WriteNull("pencil");

            return;
        }

        json.WriteStartObject("pencil");
        Members(json, sheet.Pencilled, sheet.PencilSays);
        json.WriteEndObject();
    }

    public static void Members(Utf8JsonWriter json, string? text, SaidOfNumber? says)
    {
        json.WriteString("text", text);
        json.WriteString("kind", says?.Kind);
        json.WriteString("series", says?.Series);
        json.Whole("number", says?.Number);
        json.Whole("size", says?.Size);
        json.WriteString("hedge", says?.Hedge);
        json.WriteString("notation", says?.Notation);
        json.Whole("state", says?.State);
        json.Whole("state_of", says?.StateOf);
    }
}
