using System.CommandLine;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.Cli;

/// <summary><c>edreg stock return</c>: codes that came back against what is out with someone.</summary>
internal static class StockReturnCommand
{
    public static Command Create(CommandContext context)
    {
        var place = Arg.Text("PLACE", "The place they are put in: the end of its path is enough.");
        ScanOptions scans = new();
        var from = Opt.Text("--from", "WHO", "From whom: a name or number of the address book.");
        from.Required = true;
        var date = Opt.Date("--date", "When. Else today.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("return", "Records codes that came back against what is out with someone: what was scanned is put away, what was not is still out.", "edreg stock return \"Drawer 1\" --from \"Quay Gallery\" --file came-back.txt") { place };
        scans.AddTo(command);
        command.Add(from);
        command.Add(date);
        command.Add(note);

        command.SetAction(line => context.Record(line, register =>
        {
            var read = scans.Read(context, line);
            var id = register.ReceiveSheets.Run(
                new SheetsToReceive { Place = line.GetRequiredValue(place), From = line.GetRequiredValue(from)!, Date = line.GetValue(date), Note = line.GetValue(note) },
                read);

            return StockPage.Recorded(register.LookAround.StockTake(id), read);
        }));

        return command;
    }
}
