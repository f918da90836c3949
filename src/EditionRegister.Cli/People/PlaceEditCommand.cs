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
        var inside = Opt.Text("--inside", "PATH", "The place it lies in from now on, with everything in it.");
        var outermost = Opt.Flag("--outermost", "It lies in no other place any more.");
        var keeper = Opt.Text("--keeper", "WHO", "Who keeps it: a name or number of the address book.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        var seen = Opt.Id("--seen", "an entry", "The entry that had last written the place when you looked; a change made since is then refused.");
        CommandWithExample command = new("edit", "Puts right what the address book says of a place, or moves it into another or out of it; what lies in it stays in it.", "edreg place edit \"Drawer 3\" --name \"Drawer 4\"") { path, name, inside, outermost, keeper, note, seen };

        command.SetAction(line => context.Record(line, register =>
        {
            if (line.GetValue(outermost) && line.GetValue(inside) is not null)
            {
                throw new WrongUsageException("--inside and --outermost cannot both be: a place lies in another, or in none.");
            }

            PlaceCorrection correction = new() { Name = line.GetValue(name), Inside = line.GetValue(outermost) ? "" : line.GetValue(inside), Keeper = line.GetValue(keeper), Note = line.GetValue(note) };

            if (correction == new PlaceCorrection())
            {
                throw new WrongUsageException("Nothing is said that would be put right: give --name, --inside, --outermost, --keeper or --note.");
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
