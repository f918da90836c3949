using System.CommandLine;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.Cli;

/// <summary><c>edreg stock take</c>: records what was scanned in a place against what should lie there.</summary>
internal static class StockTakeCommand
{
    public static Command Create(CommandContext context)
    {
        var place = Arg.Text("PLACE", "What is counted: the end of its path is enough, as in Drawer 2.");
        ScanOptions scans = new();
        var alone = Opt.Flag("--alone", "Only the place itself, without the places inside it.");
        var empty = Opt.Flag("--empty", "Nothing lies there, so there is no code to give.");
        var date = Opt.Date("--date", "When. Else today.");
        var takenBy = Opt.Text("--taken-by", "WHO", "Who counted: a name or number of the address book. Else the one who writes.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("take", "Records what was scanned in a place against what should lie there. What the register says of the sheets stays as it is until you settle it.", "edreg stock take \"Drawer 2\" --file scanned.txt") { place };
        scans.AddTo(command);
        command.Add(alone);
        command.Add(empty);
        command.Add(date);
        command.Add(takenBy);
        command.Add(note);

        command.SetAction(line => context.Record(line, register =>
        {
            var read = scans.Read(context, line);
            var id = register.TakeStock.Run(
                new StockToTake
                {
                    Place = line.GetRequiredValue(place),
                    Alone = line.GetValue(alone),
                    IsEmpty = line.GetValue(empty),
                    Date = line.GetValue(date),
                    Person = line.GetValue(takenBy),
                    Note = line.GetValue(note),
                },
                read);

            return StockPage.Recorded(register.LookAround.StockTake(id), read);
        }));

        return command;
    }
}
