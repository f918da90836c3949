using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg set take-out</c>: takes sheets out of the copies they lie in.</summary>
internal static class SetTakeOutCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work that is the set.");
        ChooserOptions chooser = new();
        CommandWithExample command = new("take-out", "Takes sheets out of the copies of a set; they stay where they are.", "edreg set take-out 9 --sheets 7KQ4-M2X3") { work };
        chooser.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(work)!.Value;
            var sheets = register.TakeOutOfSet.Run(id, chooser.Read(line));
            var seen = register.LookAround.Set(id);

            return new Recorded(SetsSaid.TakenOut(seen.Work, sheets), json =>
            {
                json.WriteNumber("sheets", sheets);
                SetJson.WriteHead(json, seen);
            });
        }));

        return command;
    }
}
