using System.CommandLine;
using System.Text.Json;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Cli;

/// <summary><c>edreg grade</c>: grades sheets of a pile; without marks it shows the grades there are.</summary>
internal static class GradeCommand
{
    private static readonly Column[] Columns =
        [new("sheet", IsRight: true), new("code"), .. GradeAspect.All.Select(aspect => new Column(aspect.Word, IsRight: true)), new("sorted"), new("beside"), new("note")];

    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        GradeOptions options = new();
        CommandWithExample command = new("grade", "Grades sheets beside the guide sheet or the bon à tirer, 1 poor to 5 as good as it gets; without marks, shows the grades there are.", "edreg grade --work 3 --pile \"1-9, 12\" --registration 4 --inking 5 --against guide-sheet");
        chooser.AddTo(command);
        options.AddTo(command);

        command.SetAction(line => options.IsAsked(line)
            ? context.Record(line, register =>
            {
                var grade = options.Read(line);
                var sheets = register.GradeSheets.Run(chooser.Read(line), grade);

                return new Recorded(SortingSaid.Graded(sheets, grade), json =>
                {
                    json.WriteNumber("sheets", sheets);
                    GradeJson.WriteMarks(json, aspect => grade.Marks.TryGetValue(aspect, out var mark) ? mark : null);
                });
            })
            : context.Look(line, (register, printer) => Print(printer, [.. register.LookAround.Chosen(chooser.Read(line)).SelectMany(chosen => chosen.Sheets)])));

        return command;
    }

    private static void Print(Printer printer, IReadOnlyList<Impression> sheets) => printer.Show(
        text: () =>
        {
            printer.Table(Columns, sheets.Select(sheet => (string[])
            [
                Counted.Figure(sheet.Ordinal), sheet.ShownCode, .. GradeShown.Cells(sheet.Grade), Called.Plain(sheet.Standing),
                sheet.Grade is { Against: not "unknown" } grade ? Called.Plain(grade.Against) : "", sheet.Grade?.Note ?? "",
            ]));
            printer.Line($"{Counted.Figure(sheets.Count(sheet => sheet.Grade is not null))} of {Counted.Sheets(sheets.Count)} graded.");
        },
        json: json => json.Each("sheets", sheets, sheet =>
        {
            json.WriteNumber("sheet", sheet.Ordinal);
            json.WriteString("code", sheet.ShownCode);
            json.WriteString("standing", sheet.Standing);
            GradeJson.Write(json, sheet.Grade);
        }));
}

/// <summary>Grades, for machines: null where nobody looked.</summary>
internal static class GradeJson
{
    public static void Write(Utf8JsonWriter json, Grade? grade)
    {
        WriteMarks(json, aspect => aspect.MarkOf(grade));
        json.WriteString("against", grade?.Against);
        json.WriteString("graded", grade?.Graded.Text);
        json.WriteString("grade_note", grade?.Note);
    }

    public static void WriteMarks(Utf8JsonWriter json, Func<GradeAspect, int?> mark)
    {
        foreach (var aspect in GradeAspect.All)
        {
            json.Whole(aspect.Word, mark(aspect));
        }
    }
}
