using System.CommandLine;
using EditionRegister.Domain.Dates;

namespace EditionRegister.Cli;

/// <summary><c>edreg reserve</c>: keeps sheets for someone.</summary>
internal static class ReserveCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var person = Opt.Text("--for", "WHO", "For whom. Else for somebody not named.");
        var until = Opt.Date("--until", "Until when. It stands until it is lifted all the same.");
        var date = Opt.Date("--date", "Since when. Else today.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("reserve", "Keeps sheets for someone: they stay where they are and are not free to sell.", "edreg reserve --edition 3 --sheets 5 --for \"Inés Vargøy\" --until 2026-12-01") { person, until, date, note };
        chooser.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var sheets = register.ReserveSheets.Run(chooser.Read(line), line.GetValue(person), line.GetValue(date), line.GetValue(until), line.GetValue(note));
            var name = line.GetValue(person) is { } who ? Names.Of(register, who) : null;
            var end = line.GetValue(until) ?? RecordedDate.None;

            return new Recorded(MovesSaid.Reserved(sheets, name, end), json =>
            {
                json.WriteNumber("sheets", sheets);
                json.WriteString("for", name);
                json.Date("until", end);
            });
        }));

        return command;
    }
}
