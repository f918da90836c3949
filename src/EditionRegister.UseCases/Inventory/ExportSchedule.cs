using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Inventory;
using EditionRegister.Formats.Csv;
using EditionRegister.UseCases.Documents;
using EditionRegister.UseCases.Wording;

namespace EditionRegister.UseCases.Inventory;

/// <summary>Writes an insurance schedule as CSV (RFC 4180).</summary>
public static class ExportSchedule
{
    private static readonly string[] Columns = ["code", "maker", "title", "year", "technique", "number", "where", "owner", "value", "currency", "basis"];

    /// <exception cref="Domain.RefusedException">output-not-written.</exception>
    public static void To(InsuranceSchedule schedule, string path) =>
        Output.Write(path, stream => CsvFile.Write(stream, Columns, schedule.Lines.Select(Row)));

    private static string?[] Row(ScheduleLine line) =>
    [
        line.Sheet.ShownCode, line.Work.ShownMaker, line.Work.ShownTitle, line.Work.Year.Text, line.Work.Technique, line.Work.NumberOf(line.Sheet),
        WhereInWords.Of(line.Work, line.Sheet), WhereInWords.OwnerOf(line.Work, line.Sheet), PricesShown.Amount(line.Value, line.Currency), line.Currency, line.Basis,
    ];
}
