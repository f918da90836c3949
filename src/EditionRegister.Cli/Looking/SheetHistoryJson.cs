using System.Text.Json;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Cli;

/// <summary>What became of a sheet on the bench: its grade, what was altered on it, what it was worked over into, the set it lies in or holds; for machines.</summary>
internal static class SheetHistoryJson
{
    public static void Write(Utf8JsonWriter json, Work work, Impression sheet)
    {
        GradeJson.Write(json, sheet.Grade);
        json.Each("changes_on_the_sheet", sheet.Changes, change =>
        {
            json.WriteString("what", change.What);
            json.WriteString("was", change.Was);
            json.WriteString("became", change.Became);
            json.WriteString("reason", change.Reason);
            json.Date("date", change.Changed);
        });
        json.Whole("worked_over_into", sheet.WorkedInto?.Work);
        json.Whole("worked_over_from", work.WorkedOver?.Work);
        json.WriteString("in_copy", sheet.InSet?.ShownCopyCode);

        if (work.Set is { } set)
        {
            json.Each("parts", set.Parts, part =>
            {
                var lies = SetSeen.In(sheet, part);
                json.WriteNumber("work", part.Work);
                json.WriteString("title", part.Title);
                json.WriteString("number", lies?.Number);
                json.WriteString("code", lies?.ShownCode);
            });
        }
    }
}
