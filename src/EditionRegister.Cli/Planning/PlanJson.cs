using System.Text.Json;
using EditionRegister.Domain.Planning;
using EditionRegister.UseCases.Planning;

namespace EditionRegister.Cli;

/// <summary>A plan of sheets and paper, for machines. Shares are from 0 to 1.</summary>
internal static class PlanJson
{
    public static void Write(Utf8JsonWriter json, SheetsPlanned planned, PaperPieces? pieces)
    {
        Write(json, "plan", planned.Plan);

        if (planned.Learned is { } rate)
        {
            json.WriteStartObject("learned");
            json.WriteNumber("kept", rate.Kept);
            json.WriteNumber("of", rate.Of);
            json.WriteNumber("passes", rate.Passes);
            json.WriteNumber("lower", rate.Lower);
            json.WriteNumber("upper", rate.Upper);
            json.WriteString("interval", "clopper-pearson");
            json.WriteBoolean("few", rate.IsFew);
            json.WriteEndObject();
        }

        if (planned.Safer is { } safer)
        {
            Write(json, "safer", safer);
        }

        if (pieces is not null)
        {
            json.WriteStartObject("paper");
            json.WriteNumber("pieces_per_sheet", pieces.PerSheet);
            json.WriteNumber("rows", pieces.Rows);
            json.WriteNumber("columns", pieces.Columns);
            json.WriteBoolean("turned", pieces.IsTurned);
            json.WriteNumber("full_sheets", pieces.SheetsFor(planned.Safer?.Start ?? planned.Plan.Start));
            json.WriteEndObject();
        }
    }

    private static void Write(Utf8JsonWriter json, string name, SheetsToStart plan)
    {
        json.WriteStartObject(name);
        json.WriteNumber("good", plan.Good);
        json.WriteNumber("passes", plan.Passes);
        json.WriteNumber("keep", plan.Keep);
        json.WriteNumber("sure", plan.Sure);
        json.WriteNumber("start", plan.Start);
        json.Each("rows", plan.Rows, row =>
        {
            json.WriteNumber("start", row.Sheets);
            json.WriteNumber("probability", row.Probability);
        });
        json.WriteEndObject();
    }
}
