using System.CommandLine;
using EditionRegister.UseCases;
using EditionRegister.UseCases.People;

namespace EditionRegister.Cli;

/// <summary><c>edreg return</c>: takes sheets back from whoever has them.</summary>
internal static class ReturnCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var from = Opt.Text("--from", "WHO", "From whom; refused where somebody else has one of them.");
        var place = Opt.Text("--place", "PLACE", "Where they are put. Else they are with the maker.");
        var date = Opt.Date("--date", "When. Else today.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("return", "Takes sheets back from whoever has them.", "edreg return --edition 3 --sheets 8 --from \"Quay Gallery\" --place \"Drawer 3\"");
        chooser.AddTo(command);
        command.Add(from);
        command.Add(place);
        command.Add(date);
        command.Add(note);

        command.SetAction(line => context.Record(line, register =>
        {
            var sheets = register.ReturnImpressions.Run(chooser.Read(line), line.GetValue(from), line.GetValue(place), line.GetValue(date), line.GetValue(note));
            var name = line.GetValue(from) is { } who ? Names.Of(register, who) : null;
            var path = PathOf(register, line.GetValue(place));
            var day = context.DayOf(line.GetValue(date));

            return new Recorded(SheetSaid.Returned(sheets, name, path, day), json =>
            {
                json.WriteNumber("sheets", sheets);
                json.WriteString("from", name);
                json.WriteString("place", path);
                json.Date("date", day);
            });
        }));

        return command;
    }

    private static string? PathOf(Register register, string? place)
    {
        var book = register.LookAround.Book();

        return place is null ? null : book.PathOf(Places.Find(book, place));
    }
}
