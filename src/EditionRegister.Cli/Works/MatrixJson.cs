using System.Text.Json;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>Blocks, plates, stones and screens, for machines.</summary>
internal static class MatrixJson
{
    public static void Write(Utf8JsonWriter json, Matrix matrix)
    {
        json.WriteNumber("matrix", matrix.Id);
        json.WriteString("what", matrix.What);
        json.WriteString("material", matrix.Material);
        json.WriteString("reduction", matrix.Reduction);
        json.Date("made", matrix.Made);
        json.WriteString("fate", matrix.Fate);
        json.Date("fate_date", matrix.FateDate);
        json.WriteString("fate_note", matrix.FateNote);
    }
}
