using System.CommandLine;
using EditionRegister.UseCases.People;

namespace EditionRegister.Cli;

/// <summary><c>edreg put-away</c>: puts sheets away in a place.</summary>
internal static class PutAwayCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var place = Opt.Text("--place", "PLACE", "Where: the end of its path is enough, as in Drawer 3.");
        place.Required = true;
        var date = Opt.Date("--date", "When. Else today.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("put-away", "Puts sheets away in a place.", "edreg put-away --edition 3 --sheets 1-12 --place \"Drawer 3\"");
        chooser.AddTo(command);
        command.Add(place);
        command.Add(date);
        command.Add(note);

        command.SetAction(line => context.Record(line, register =>
        {
            var sheets = register.PutAway.Run(chooser.Read(line), line.GetRequiredValue(place)!, line.GetValue(date), line.GetValue(note));
            var book = register.LookAround.Book();
            var path = book.PathOf(Places.Find(book, line.GetRequiredValue(place)!));
            var day = context.DayOf(line.GetValue(date));

            return new Recorded(SheetSaid.PutAway(sheets, path, day), json =>
            {
                json.WriteNumber("sheets", sheets);
                json.WriteString("place", path);
                json.Date("date", day);
            });
        }));

        return command;
    }
}
