using System.CommandLine;
using System.Text;
using EditionRegister.UseCases.Inventory;

namespace EditionRegister.Cli;

/// <summary><c>edreg inventory</c>: writes the inventory as CSV.</summary>
internal static class InventoryCommand
{
    public static Command Create(CommandContext context)
    {
        var maker = Opt.Text("--maker", "WHO", "Only works of this maker.");
        var edition = Opt.Id("--edition", "an edition", "Only this edition.");
        var place = Opt.Text("--place", "PATH", "Only what lies in this place, or in a place inside it.");
        var available = Opt.Flag("--available", "Only what is free to sell.");
        var owners = Opt.Flag("--with-owners", "Add owner, net price and notes: for your own books, not to hand out.");
        var file = Opt.Text("--out", "FILE", "The CSV to write. Else it is printed.");
        var asOf = AsOfOption.Create();
        CommandWithExample command = new("inventory", "Writes the inventory as CSV (UTF-8, comma), the same bytes for the same register.", "edreg inventory --available --out for-the-fair.csv") { maker, edition, place, available, owners, file, asOf };

        command.SetAction(line =>
        {
            InventoryChoice choice = new()
            {
                Maker = line.GetValue(maker),
                Edition = line.GetValue(edition),
                Place = line.GetValue(place),
                Available = line.GetValue(available),
                Owners = line.GetValue(owners),
            };

            if (line.GetValue(asOf) is { } day)
            {
                return InventoryThen.Write(context, line, day, choice, context.PathOf(line.GetValue(file)));
            }

            return line.GetValue(file) is { } path ? ToFile(context, line, choice, context.PathOf(path)!) : ToOutput(context, line, choice);
        });

        return command;
    }

    private static int ToFile(CommandContext context, ParseResult line, InventoryChoice choice, string path) => context.Record(line, register =>
    {
        var count = register.ExportInventory.Run(choice, path);

        return new Recorded(PapersSaid.Listed(count, context.Shown(path)), json =>
        {
            json.WriteString("file", path);
            json.WriteNumber("impressions", count);
        });
    });

    private static int ToOutput(CommandContext context, ParseResult line, InventoryChoice choice)
    {
        using MemoryStream stream = new();
        context.Open(line).ExportInventory.Run(choice, stream);
        context.Output.Write(Encoding.UTF8.GetString(stream.ToArray()));

        return ExitCode.Done;
    }
}
