using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg work show</c>: shows one work with its people, matrices, print runs and editions.</summary>
internal static class WorkShowCommand
{
    public static Command Create(CommandContext context)
    {
        var id = Arg.Id("WORK", "The number of the work.");
        CommandWithExample command = new("show", "Shows one work: its people, what it is printed from, its print runs and its editions.", "edreg work show 3") { id };

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var work = register.LookAround.Work(line.GetValue(id)!.Value);
            printer.Show(
                text: () => WorkPage.Print(printer, work, register.Settings.Sizes),
                json: json => WorkJson.Write(json, work));
        }));

        return command;
    }
}
