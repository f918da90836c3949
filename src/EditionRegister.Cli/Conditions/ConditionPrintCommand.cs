using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg condition print</c>: a condition report as a paper to sign.</summary>
internal static class ConditionPrintCommand
{
    public static Command Create(CommandContext context)
    {
        var code = Arg.Code("The code of the sheet.");
        var report = Opt.Some("--report", "Which of its reports, from one. Else the newest.");
        var file = Opt.Text("--out", "FILE", "The text file to write. Else it is printed.");
        CommandWithExample command = new("print", "Prints a condition report with room for two signatures.", "edreg condition print 7KQ4-M2X3 --out condition.txt") { code, report, file };

        command.SetAction(line => line.GetValue(file) is { } path ? ToFile(context, line, context.PathOf(path)!) : context.Look(line, (register, printer) =>
        {
            var lines = register.WriteConditionSheet.Lines(line.GetRequiredValue(code), line.GetValue(report));
            printer.Show(
                text: () =>
                {
                    foreach (var text in lines)
                    {
                        printer.Line(text);
                    }
                },
                json: json => json.Texts("lines", lines));
        }));

        return command;

        int ToFile(CommandContext at, ParseResult line, string path) => at.Record(line, register =>
        {
            var written = register.WriteConditionSheet.Run(line.GetRequiredValue(code), path, line.GetValue(report));

            return new Recorded($"Condition report written: {at.Shown(written)}.", json => json.WriteString("file", written));
        });
    }
}
