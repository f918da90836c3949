using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg work join</c>: names people who had a part in a work.</summary>
internal static class WorkJoinCommand
{
    public static Command Create(CommandContext context)
    {
        var id = Arg.Id("WORK", "The number of the work.");
        ContributorOptions contributors = new();
        CommandWithExample command = new("join", "Names people who had a part in a work: who printed it, where, who published it.", "edreg work join 3 --printer \"Joost Averink\"") { id };
        contributors.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var named = contributors.Read(line);

            if (named.Count == 0)
            {
                throw new WrongUsageException("Nobody is named: give --printer, --workshop, --publisher or --estate.");
            }

            var work = line.GetValue(id)!.Value;
            register.JoinWork.Run(work, named);

            return new Recorded(BenchSaid.Joined(register.LookAround.Work(work), named.Count), json => json.WriteNumber("work", work));
        }));

        return command;
    }
}
