using System.CommandLine;
using EditionRegister.Domain.Integrity;
using EditionRegister.UseCases;

namespace EditionRegister.Cli;

/// <summary><c>edreg accept</c>: accepts a finding with a reason, or takes that back.</summary>
internal static class AcceptCommand
{
    public static Command Create(CommandContext context)
    {
        var handle = Arg.Text("HANDLE", "What `edreg check` calls the finding.");
        var reason = Opt.Text("--reason", "TEXT", "Why it may stand.");
        var takeBack = Opt.Flag("--take-back", "Take the acceptance back, so that checks count the finding again.");
        CommandWithExample command = new("accept", "Accepts a finding with a reason: it stays on record, counts no more, and returns when its facts change.", "edreg accept 7KQ4M2 --reason \"counted again, the printer's sheet was wrong\"")
        {
            handle, reason, takeBack,
        };

        command.SetAction(line =>
        {
            var (why, back) = (line.GetValue(reason), line.GetValue(takeBack));

            if (why is null != back)
            {
                throw new WrongUsageException("Give --reason to accept a finding, or --take-back to take that back; one of the two.");
            }

            return context.Record(line, register => why is null ? TakenBack(register, line.GetRequiredValue(handle)) : Accepted(register, line.GetRequiredValue(handle), why));
        });

        return command;
    }

    private static Recorded Accepted(Register register, string handle, string reason)
    {
        var finding = register.AcceptFinding.Run(handle, reason);

        return new Recorded($"{FindingsSaid.Accepted(finding)}; `edreg accept {finding.Handle} --take-back` takes this back.", json => Write(json, finding));
    }

    private static Recorded TakenBack(Register register, string handle)
    {
        var finding = register.TakeAcceptanceBack.Run(handle);

        return new Recorded(FindingsSaid.TakenBack(finding), json => Write(json, finding));
    }

    private static void Write(System.Text.Json.Utf8JsonWriter json, Finding finding)
    {
        json.WriteString("handle", finding.Handle);
        json.WriteString("rule", finding.Rule);
        json.WriteString("subject", finding.Subject.Name);
        json.WriteString("finding", finding.Message);
    }
}
