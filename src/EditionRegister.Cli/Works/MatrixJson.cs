using System.Text.Json;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>Blocks, plates, stones and screens, for machines.</summary>
internal static class MatrixJson
{
    public static void Write(Utf8JsonWriter json, Work work, Matrix matrix)
    {
        json.WriteNumber("matrix", matrix.Id);
        json.WriteString("code", matrix.ShownCode);
        json.WriteString("what", matrix.What);
        json.WriteString("part", matrix.Part);
        json.WriteString("material", matrix.Material);
        json.WriteString("reduction", matrix.Reduction);
        json.Date("made", matrix.Made);
        json.WriteString("place", matrix.Place is { } place ? work.Book.PathOf(place) : null);
        json.WriteString("keeper", matrix.Keeper is { } keeper ? work.Book.NameOf(keeper) : null);
        json.WriteString("fate", matrix.Fate);
        json.Date("fate_date", matrix.FateDate);
        json.WriteString("fate_note", matrix.FateNote);
        json.WriteString("fate_proof", work.Impressions.FirstOrDefault(sheet => sheet.Id == matrix.FateProof)?.ShownCode);
        json.Each("states", matrix.States, state =>
        {
            json.WriteString("state", state.Name);
            json.Date("reached", state.Reached);
            json.WriteString("note", state.Note);
        });
    }
}
