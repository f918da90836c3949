using System.CommandLine;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;

namespace EditionRegister.Cli;

/// <summary><c>edreg find</c>: sheets were found again.</summary>
internal static class FindCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var place = Opt.Text("--place", "PLACE", "Where they lie now. Else they are with the maker.");
        var with = Opt.Text("--with", "WHO", "Who has them now.");
        var date = Opt.Date("--date", "When. Else today.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("find", "Records that sheets which were lost, stolen or nobody knew where were found again. To look for impressions, use `edreg list`.", "edreg find --sheets 7KQ4-M2X3 --place \"Drawer 3\"") { place, with, date, note };
        chooser.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            SentTo to = new(line.GetValue(with), line.GetValue(place));
            var sheets = register.FindAgain.Run(chooser.Read(line), to, line.GetValue(date), line.GetValue(note));
            var book = register.LookAround.Book();
            var (name, path) = (to.With is { } who ? Names.Of(register, who) : null, to.Place is { } typed ? book.PathOf(Places.Find(book, typed)) : null);
            var day = context.DayOf(line.GetValue(date));

            return new Recorded(MovesSaid.Found(sheets, MovesSaid.Destination(name, path), day), json =>
            {
                json.WriteNumber("sheets", sheets);
                json.WriteString("with", name);
                json.WriteString("place", path);
                json.Date("date", day);
            });
        }));

        return command;
    }
}
