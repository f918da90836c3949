using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg shows remove</c>: takes impressions off the list of a show.</summary>
internal static class ShowsRemoveCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var id = Arg.Id("SHOW", "The number of the show.");
        CommandWithExample command = new("remove", "Takes impressions off the list of a show; the logbook keeps that they were on it.", "edreg shows remove 1 --sheets 7KQ4-M2X3") { id };
        chooser.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var sheets = register.RemoveFromShow.Run(line.GetValue(id)!.Value, chooser.Read(line));
            var seen = register.LookAround.Show(line.GetValue(id)!.Value);

            return new Recorded(ShowsShown.TakenOff(sheets, seen.Show.ShownName, seen.Listed.Count), json =>
            {
                json.WriteNumber("show", seen.Show.Id);
                json.WriteNumber("sheets", sheets);
                json.WriteNumber("listed", seen.Listed.Count);
            });
        }));

        return command;
    }
}
