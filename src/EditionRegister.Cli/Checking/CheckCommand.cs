using System.CommandLine;
using EditionRegister.Domain.Integrity;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Checking;

namespace EditionRegister.Cli;

/// <summary><c>edreg check</c>: checks the whole register, and lists everything found as it is found.</summary>
internal static class CheckCommand
{
    public static Command Create(CommandContext context)
    {
        var pictures = Opt.Flag("--pictures", "Read and hash the file of every picture too. Else only whether it is there, and as long as it should be.");
        CommandWithExample command = new("check", "Checks the whole register and lists everything found. Changes nothing.", "edreg check --json") { pictures };

        command.SetAction(line => Check(context.Open(line), context.Printer(), line.GetValue(pictures)));

        return command;
    }

    private static int Check(Register register, Printer printer, bool hashPictures)
    {
        FindingTally tally = new();
        var check = register.CheckRegister;
        var findings = ReadableFindings.Of(check, hashPictures: hashPictures).Select(tally.Count);

        printer.Show(
            text: () =>
            {
                List<Finding> accepted = [];

                foreach (var finding in findings)
                {
                    if (finding.Accepted is null)
                    {
                        FindingText.Print(printer, finding);
                    }
                    else
                    {
                        accepted.Add(finding);
                    }
                }

                FindingText.PrintAccepted(printer, accepted);
                FindingText.PrintWayToAccept(printer, tally.Acceptable);
                printer.Line(tally.LastLine(ReadableFindings.Head(register, check)));
            },
            json: json =>
            {
                json.Each("findings", findings, finding => FindingText.Write(json, finding));
                tally.Write(json, ReadableFindings.Head(register, check));
            });

        return tally.Contradictions > 0 ? ExitCode.Refused : ExitCode.Done;
    }
}
