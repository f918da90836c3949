using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg shows add</c>: lists impressions for a show.</summary>
internal static class ShowsAddCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var id = Arg.Id("SHOW", "The number of the show.");
        CommandWithExample command = new("add", "Lists impressions for a show; one that is sold or away may hang as well.", "edreg shows add 1 --edition 3 --sheets 1-4") { id };
        chooser.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var sheets = register.AddToShow.Run(line.GetValue(id)!.Value, chooser.Read(line));
            var seen = register.LookAround.Show(line.GetValue(id)!.Value);

            return new Recorded(ShowsShown.Listed(sheets, seen.Show.ShownName, seen.Listed.Count), json =>
            {
                json.WriteNumber("show", seen.Show.Id);
                json.WriteNumber("sheets", sheets);
                json.WriteNumber("listed", seen.Listed.Count);
            });
        }));

        return command;
    }
}
