using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg read</c>: shows what reading a file in would do, and does it when told to go.</summary>
internal static class ReadCommand
{
    public static Command Create(CommandContext context)
    {
        var file = Arg.Text("FILE", "A CSV file with a header, one impression on a line.");
        var maps = Opt.Texts("--map", "HEADER=COLUMN", "Take a header of the file for a column of the register; with nothing after the sign it is kept as a note.");
        var go = Opt.Flag("--go", "Read the file in. Without it nothing is changed.");
        CommandWithExample command = new("read", "Reads a CSV file in as one batch; shows first what that would do.", "edreg read prints.csv --map \"Edition no.=number\" --go") { file, maps, go };

        command.SetAction(line =>
        {
            var register = context.Open(line);
            var path = Path.GetFullPath(line.GetRequiredValue(file), context.Services.CurrentDirectory);
            var said = line.GetValue(maps) ?? [];
            var report = register.ReadIn.Preview(path, said);

            // A file that cannot be read in is reported in full, asked to go or not, and never half taken.
            if (line.GetValue(go) && report.Problems.Count == 0)
            {
                report = register.ReadIn.Run(path, said);
            }

            var printer = context.Printer();
            printer.Show(text: () => ReadInPage.Print(printer, report), json: json => ReadInJson.Write(json, report));

            return report.Problems.Count > 0 ? ExitCode.Refused : ExitCode.Done;
        });

        return command;
    }
}
