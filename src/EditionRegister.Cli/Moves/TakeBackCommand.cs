using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg take-back</c>: takes the last move or sale back where it was recorded by mistake.</summary>
internal static class TakeBackCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var move = Opt.Flag("--move", "The last step of where it is.");
        var transfer = Opt.Flag("--transfer", "The last step of whose it is: a sale, a gift.");
        CommandWithExample command = new("take-back", "Takes the last move or sale of sheets back where it was recorded by mistake; the logbook keeps both.", "edreg take-back --edition 3 --sheets 6 --transfer") { move, transfer };
        chooser.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var (isMove, isTransfer) = (line.GetValue(move), line.GetValue(transfer));

            if (!isMove && !isTransfer)
            {
                throw new WrongUsageException("Say what is taken back: --move, --transfer, or both.");
            }

            var count = register.TakeLinkBack.Run(chooser.Read(line), isMove, isTransfer);

            return new Recorded(SheetSaid.TakenBack(count, isMove, isTransfer), json => json.WriteNumber("sheets", count));
        }));

        return command;
    }
}
