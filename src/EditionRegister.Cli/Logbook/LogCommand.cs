using System.CommandLine;
using EditionRegister.Domain;

namespace EditionRegister.Cli;

/// <summary><c>edreg log</c>: shows the logbook, newest first, or one entry of it whole.</summary>
internal static class LogCommand
{
    private const int Usual = 20;

    public static Command Create(CommandContext context)
    {
        var entry = Arg.PerhapsId("N", "Show this entry whole.");
        var newest = Opt.Some("--newest", "How many entries. Else 20.");
        CommandWithExample command = new("log", "Shows the logbook, newest first, or one entry of it whole.", "edreg log --newest 5") { entry, newest };

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            if (line.GetValue(entry) is { } n)
            {
                LogbookPage.Print(printer, register.LookAround.Entry(n) ?? throw NoSuchEntry(n, register.LookAround.Head().N));
            }
            else
            {
                LogbookPage.Print(printer, register.LookAround.Logbook(line.GetValue(newest) ?? Usual), register.LookAround.Head());
            }
        }));

        return command;
    }

    private static RefusedException NoSuchEntry(long n, long last) =>
        new("entry-not-found", $"The logbook has no entry {Counted.Figure(n)}: it runs from 1 to {Counted.Figure(last)}. `edreg log` shows the newest.");
}
