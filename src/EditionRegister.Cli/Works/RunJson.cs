using System.Text.Json;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>Print runs, for machines.</summary>
internal static class RunJson
{
    public static void Write(Utf8JsonWriter json, Work work, PrintRun run)
    {
        json.WriteNumber("run", run.Ordinal);
        json.WriteString("purpose", run.Purpose);
        WriteSheet(json, run);
        json.Whole("started", run.Started);
        json.Whole("spoiled", run.Spoiled);
        json.Whole("unused", run.Unused);
        json.Whole("held_out", run.HeldOut);
        json.WriteNumber("pile", work.Impressions.Count(sheet => sheet.Run == run.Id));
        json.WriteString("run_note", run.Note);
        json.Whole("cut_into", run.CutInto);
        json.Whole("made_of", run.MadeOf);
        json.Date("ready", run.Ready);
        json.WriteString("posthumous", run.Posthumous);
        json.WriteString("cancellation_proof", run.CancellationProof);
        json.WriteNumber("passes", run.Passes.Count);
    }

    /// <summary>What a run says of every sheet of it.</summary>
    public static void WriteSheet(Utf8JsonWriter json, PrintRun run)
    {
        json.Date("printed", run.Printed);
        json.WriteString("paper", run.Paper);
        json.WriteString("state", run.State);
        json.Millimetres("image_height_mm", run.ImageHeight);
        json.Millimetres("image_width_mm", run.ImageWidth);
        json.Millimetres("sheet_height_mm", run.SheetHeight);
        json.Millimetres("sheet_width_mm", run.SheetWidth);
        json.WriteString("image_written", run.ImageWritten);
        json.WriteString("sheet_written", run.SheetWritten);
        Paper(json, run.PaperRead);
    }

    /// <summary>What was read of the paper's words, or null.</summary>
    private static void Paper(Utf8JsonWriter json, PaperOnRecord? paper)
    {
        if (paper is null)
        {
            json.WriteNull("paper_read");

            return;
        }

        json.WriteStartObject("paper_read");
        json.WriteString("name", paper.Name);
        json.WriteString("maker", paper.Maker);
        json.Hundredths("grams_per_square_metre", paper.Grammage);
        json.Hundredths("pounds", paper.Pounds);
        json.Millimetres("basis_height_mm", paper.BasisHeight);
        json.Millimetres("basis_width_mm", paper.BasisWidth);
        json.Millimetres("sheet_height_mm", paper.Height);
        json.Millimetres("sheet_width_mm", paper.Width);
        json.WriteString("edges", paper.Edges);
        json.WriteString("lot", paper.Lot);
        json.WriteEndObject();
    }
}
