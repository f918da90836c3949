using System.CommandLine;
using EditionRegister.UseCases;

namespace EditionRegister.Cli;

/// <summary><c>edreg check</c>: checks the whole register, and lists everything found as it is found.</summary>
internal static class CheckCommand
{
    public static Command Create(CommandContext context)
    {
        CommandWithExample command = new("check", "Checks the whole register and lists everything found. Changes nothing.", "edreg check --json");

        command.SetAction(line => Check(context.Open(line), context.Printer()));

        return command;
    }

    private static int Check(Register register, Printer printer)
    {
        FindingTally tally = new();
        var check = register.CheckRegister;
        var findings = check.Run().Select(tally.Count);

        printer.Show(
            text: () =>
            {
                foreach (var finding in findings)
                {
                    FindingText.Print(printer, finding);
                }

                printer.Line(tally.LastLine(check.Head ?? register.LookAround.Head()));
            },
            json: json =>
            {
                json.Each("findings", findings, finding => FindingText.Write(json, finding));
                tally.Write(json, check.Head ?? register.LookAround.Head());
            });

        return tally.Contradictions > 0 ? ExitCode.Refused : ExitCode.Done;
    }
}
