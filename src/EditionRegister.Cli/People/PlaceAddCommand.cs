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
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("add", "Records a place, and the places around it that are not known yet.", "edreg place add \"Studio › Plan chest › Drawer 3\"") { path, keeper, note };

        command.SetAction(line => context.Record(line, register => Place(register, line.GetRequiredValue(path), line.GetValue(keeper), line.GetValue(note))));

        return command;
    }

    private static Recorded Place(Register register, string path, string? keeper, string? note)
    {
        var before = register.LookAround.Book();
        var id = register.RecordPlace.Run(path, keeper is null ? null : Persons.Find(before, keeper), note);
        var shown = register.LookAround.Book().PathOf(id);
        var isNew = !before.Places.ContainsKey(id);

        return new Recorded(AddressBookSaid.PlaceRecorded(id, shown, isNew), json =>
        {
            json.WriteNumber("place", id);
            json.WriteString("path", shown);
            json.WriteBoolean("is_new", isNew);
        });
    }
}
