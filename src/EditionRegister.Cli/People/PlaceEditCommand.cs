using System.CommandLine;
using EditionRegister.UseCases.People;

namespace EditionRegister.Cli;

/// <summary><c>edreg place edit</c>: puts right what the address book says of a place.</summary>
internal static class PlaceEditCommand
{
    public static Command Create(CommandContext context)
    {
        var path = Arg.Text("PATH", "The place, from the outside in, or as much of the end of that as is needed.");
        var name = Opt.Text("--name", "NAME", "Its own name, put right, without the places around it.");
        var keeper = Opt.Text("--keeper", "WHO", "Who keeps it: a name or number of the address book.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        var seen = Opt.Id("--seen", "an entry", "The entry that had last written the place when you looked; a change made since is then refused.");
        CommandWithExample command = new("edit", "Puts right what the address book says of a place; what lies in it stays there.", "edreg place edit \"Drawer 3\" --name \"Drawer 4\"") { path, name, keeper, note, seen };

        command.SetAction(line => context.Record(line, register =>
        {
            PlaceCorrection correction = new() { Name = line.GetValue(name), Keeper = line.GetValue(keeper), Note = line.GetValue(note) };

            if (correction == new PlaceCorrection())
            {
                throw new WrongUsageException("Nothing is said that would be put right: give --name, --keeper or --note.");
            }

            var id = Places.Find(register.LookAround.Book(), line.GetRequiredValue(path));
            register.EditPlace.Run(id, correction, line.GetValue(seen));
            var shown = register.LookAround.Book().PathOf(id);

            return new Recorded(AddressBookSaid.PlacePutRight(id, shown), json =>
            {
                json.WriteNumber("place", id);
                json.WriteString("path", shown);
            });
        }));

        return command;
    }
}
