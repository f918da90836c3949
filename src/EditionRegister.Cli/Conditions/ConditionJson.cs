using System.Text.Json;
using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>Condition reports for machines.</summary>
internal static class ConditionJson
{
    public static void Reports(Utf8JsonWriter json, Work work, Impression sheet) => json.Each("condition_reports", sheet.ConditionReports, report =>
    {
        json.WriteNumber("report", report.Ordinal);
        json.WriteString("occasion", report.Occasion);
        json.Date("examined", report.Examined);
        json.WriteString("examiner", report.Examiner is { } who ? work.Book.NameOf(who) : null);
        json.WriteString("summary", report.Summary);
        json.Each("remarks", report.Remarks, remark => Remark(json, remark));

        if (report.Occasion == ConditionOccasion.ComingBack)
        {
            var compared = ConditionComparison.Of(sheet, report);
            json.Whole("against_report", compared.Out?.Ordinal);
            json.Each("new", compared.New, remark => Remark(json, remark));
        }
    });

    private static void Remark(Utf8JsonWriter json, ConditionRemark remark)
    {
        json.WriteString("term", remark.Term);
        json.WriteString("position", remark.Position);
        json.WriteString("note", remark.Note);
        json.Whole("picture", remark.Picture);
    }
}
