using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg hand-over</c>: hands sheets to their owners.</summary>
internal static class HandOverCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var date = Opt.Date("--date", "When. Else today.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("hand-over", "Hands sheets to their owners, to whom they were sold or given before.", "edreg hand-over --edition 3 --sheets 6") { date, note };
        chooser.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var sheets = register.HandOver.Run(chooser.Read(line), line.GetValue(date), line.GetValue(note));
            var day = context.DayOf(line.GetValue(date));

            return new Recorded(MovesSaid.HandedOver(sheets, day), json =>
            {
                json.WriteNumber("sheets", sheets);
                json.Date("date", day);
            });
        }));

        return command;
    }
}
