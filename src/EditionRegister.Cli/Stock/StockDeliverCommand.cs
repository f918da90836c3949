using System.CommandLine;
using EditionRegister.Domain.Chains;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.Cli;

/// <summary><c>edreg stock deliver</c>: codes handed over against what was to go.</summary>
internal static class StockDeliverCommand
{
    private static readonly Dictionary<string, MoveKind> Kinds = new(StringComparer.Ordinal) { ["consign"] = MoveKind.Consigned, ["lend"] = MoveKind.Lent, ["exhibit"] = MoveKind.Exhibited };

    public static Command Create(CommandContext context)
    {
        var place = Arg.Text("PLACE", "The place they go out of: the end of its path is enough.");
        ChooserOptions going = new();
        ScanOptions scans = new();
        var to = Opt.Text("--to", "WHO", "To whom: a name or number of the address book.");
        to.Required = true;
        var kind = Opt.Word("--as", [.. Kinds.Keys], "On what terms they go. Else consign.");
        var strangersGo = Opt.Flag("--with-strangers", "What was handed over and was not to go goes too. Else it stays as it is.");
        var date = Opt.Date("--date", "When. Else today.");
        var until = Opt.Date("--until", "Until when.");
        var rate = ShareOption.Create("--rate", "The consignee's share of the price, in per cent.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("deliver", "Records codes handed over against what was to go: what was scanned goes, what was not stays.", "edreg stock deliver \"Drawer 1\" --show 2 --to \"Quay Gallery\" --as exhibit --file handed-over.txt") { place };
        going.AddTo(command);
        scans.AddTo(command);

        foreach (var option in new Option[] { to, kind, strangersGo, date, until, rate, note })
        {
            command.Add(option);
        }

        command.SetAction(line => context.Record(line, register =>
        {
            var read = scans.Read(context, line);
            var id = register.DeliverSheets.Run(
                new SheetsToDeliver
                {
                    Place = line.GetRequiredValue(place),
                    Going = going.Read(line),
                    To = line.GetRequiredValue(to)!,
                    As = Kinds[line.GetValue(kind) ?? "consign"],
                    Date = line.GetValue(date),
                    Until = line.GetValue(until),
                    Rate = line.GetValue(rate),
                    StrangersGo = line.GetValue(strangersGo),
                    Note = line.GetValue(note),
                },
                read);

            return StockPage.Recorded(register.LookAround.StockTake(id), read);
        }));

        return command;
    }
}
