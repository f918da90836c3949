using System.CommandLine;
using EditionRegister.UseCases;
using EditionRegister.UseCases.People;

namespace EditionRegister.Cli;

/// <summary><c>edreg place add</c>: records a place and the places around it.</summary>
internal static class PlaceAddCommand
{
    public static Command Create(CommandContext context)
    {
        var path = Arg.Text("PATH", "From the outside in, parted by › or > or /: Studio › Plan chest › Drawer 3.");
        var keeper = Opt.Text("--keeper", "WHO", "Who keeps it, where that is not the studio: a name or number of the address book.");
        CommandWithExample command = new("add", "Records a place, and the places around it that are not known yet.", "edreg place add \"Studio › Plan chest › Drawer 3\"") { path, keeper };

        command.SetAction(line => context.Record(line, register => Place(register, line.GetRequiredValue(path), line.GetValue(keeper))));

        return command;
    }

    private static Recorded Place(Register register, string path, string? keeper)
    {
        var before = register.LookAround.Book();
        var id = register.RecordPlace.Run(path, keeper is null ? null : Persons.Find(before, keeper));
        var shown = register.LookAround.Book().PathOf(id);
        var isNew = !before.Places.ContainsKey(id);
        var number = Counted.Figure(id);

        return new Recorded(isNew ? $"Place {number} recorded: {shown}." : $"{shown} was recorded before, as place {number}; nothing was changed.", json =>
        {
            json.WriteNumber("place", id);
            json.WriteString("path", shown);
            json.WriteBoolean("is_new", isNew);
        });
    }
}
