using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg lift</c>: lets sheets go that were kept for someone.</summary>
internal static class LiftCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        CommandWithExample command = new("lift", "Lifts a reservation: the sheets are free again.", "edreg lift --edition 3 --sheets 5");
        chooser.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var sheets = register.LiftReservation.Run(chooser.Read(line));

            return new Recorded(MovesSaid.Lifted(sheets), json => json.WriteNumber("sheets", sheets));
        }));

        return command;
    }
}
