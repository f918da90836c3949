using System.Text.Json;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Inventory;
using EditionRegister.UseCases.Inventory;
using EditionRegister.UseCases.LookingBack;

namespace EditionRegister.Cli;

/// <summary>An insurance schedule, for people and for machines; with a file it goes there and only its sums are printed.</summary>
internal static class SchedulePage
{
    private static readonly Column[] Columns =
        [new("code"), new("number"), new("title"), new("maker"), new("where"), new("whose"), new("value", IsRight: true), new("basis")];

    public static void Print(CommandContext context, Printer printer, InsuranceSchedule schedule, string? path)
    {
        ToFile(schedule, path);
        printer.Show(
            text: () =>
            {
                Body(context, printer, schedule, path);
                printer.Line(ThenShown.MindSchedule);
            },
            json: json => Write(json, schedule, path));
    }

    public static void Print(CommandContext context, Printer printer, RegisterThen then, ScheduleThen schedule, string? path)
    {
        ToFile(schedule.Then, path);
        printer.Show(
            text: () =>
            {
                ThenPrinted.Heading(printer, then);
                Body(context, printer, schedule.Then, path);
                ThenPrinted.Differences(printer, schedule.Differences);

                if (ThenShown.Sums(schedule.Now) is var known && known != ThenShown.Sums(schedule.Then))
                {
                    printer.Line($"As known now of that day: {known}");
                }

                printer.Line(ThenShown.MindSchedule);
            },
            json: json =>
            {
                Write(json, schedule.Then, path);
                ThenPrinted.Write(json, then, schedule.Differences);
                json.WriteStartObject("schedule_known_now");
                Members(json, schedule.Now);
                json.WriteEndObject();
            });
    }

    private static void ToFile(InsuranceSchedule schedule, string? path)
    {
        if (path is not null)
        {
            ExportSchedule.To(schedule, path);
        }
    }

    private static void Body(CommandContext context, Printer printer, InsuranceSchedule schedule, string? path)
    {
        if (path is not null)
        {
            printer.Line($"Schedule written: {context.Shown(path)}.");
        }
        else if (schedule.Lines.Count > 0)
        {
            printer.Table(Columns, schedule.Lines.Select(Row));
        }

        printer.Line(ThenShown.Sums(schedule));
    }

    private static string[] Row(ScheduleLine line) =>
    [
        line.Sheet.ShownCode, line.Work.NumberOf(line.Sheet), line.Work.ShownTitle, line.Work.ShownMaker, WhereInWords.Of(line.Work, line.Sheet),
        WhereInWords.OwnerOf(line.Work, line.Sheet), PricesShown.Show(line.Value, line.Currency) ?? "not on record", line.Basis == "none" ? "" : line.Basis,
    ];

    private static void Write(Utf8JsonWriter json, InsuranceSchedule schedule, string? path)
    {
        json.WriteStartObject("schedule");
        Members(json, schedule);
        json.WriteEndObject();
        json.WriteString("file", path);
        json.WriteString("caution", ThenShown.MindSchedule);
    }

    private static void Members(Utf8JsonWriter json, InsuranceSchedule schedule)
    {
        json.Each("sheets", schedule.Lines, line =>
        {
            json.WriteString("code", line.Sheet.ShownCode);
            json.WriteString("number", line.Work.NumberOf(line.Sheet));
            json.WriteString("title", line.Work.Title);
            json.WriteString("maker", line.Work.ShownMaker);
            json.WriteString("where", WhereInWords.Of(line.Work, line.Sheet));
            json.WriteString("whose", WhereInWords.OwnerOf(line.Work, line.Sheet));
            json.Amount("value", line.Value, line.Currency);
            json.WriteString("currency", line.Currency);
            json.WriteString("basis", line.Basis);
        });
        json.Each("sums", schedule.Sums, sum =>
        {
            json.WriteString("currency", sum.Currency);
            json.WriteString("amount", PricesShown.Amount((long)Math.Min(sum.MinorUnits, long.MaxValue), sum.Currency));
            json.WriteNumber("sheets", sum.Sheets);
        });
        json.WriteNumber("without_value", schedule.WithoutValue);
    }
}
