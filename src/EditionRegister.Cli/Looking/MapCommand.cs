using System.CommandLine;
using EditionRegister.Domain.Editions;

namespace EditionRegister.Cli;

/// <summary><c>edreg map</c>: shows where every number of an edition is.</summary>
internal static class MapCommand
{
    public static Command Create(CommandContext context)
    {
        var id = Arg.Id("EDITION", "The number of the edition.");
        var asOf = AsOfOption.Create();
        CommandWithExample command = new("map", "Shows the map of an edition: where every number is, and what it all comes to.", "edreg map 3") { id, asOf };

        command.SetAction(line => line.GetValue(asOf) is { } day ? ThenPrinted.Look(context, line, day, (then, printer) => ThenPages.Map(printer, then, line.GetValue(id)!.Value)) : context.Look(line, (register, printer) =>
        {
            var (work, edition) = register.LookAround.Edition(line.GetValue(id)!.Value);
            var map = NumberMap.Of(work, edition);
            printer.Show(text: () => MapPage.Print(printer, map), json: json => MapJson.Write(json, map));
        }));

        return command;
    }
}
