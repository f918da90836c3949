using System.CommandLine;
using EditionRegister.Domain.Chains;

namespace EditionRegister.Cli;

/// <summary><c>edreg mishap</c>: sheets were lost, stolen or destroyed.</summary>
internal static class MishapCommand
{
    public static Command Create(CommandContext context)
    {
        var kind = Arg.Word("WHAT", [.. Mishaps.Kinds.Select(one => one.Word)], "What happened.");
        ChooserOptions chooser = new();
        var date = Opt.Date("--date", "When. Else today.");
        var note = Opt.Text("--note", "TEXT", "How it happened.");
        CommandWithExample command = new("mishap", "Records that sheets were lost, stolen or destroyed. Their numbers stay given; the certificate of a destroyed sheet is withdrawn.", "edreg mishap destroyed --edition 3 --sheets 9 --note \"burst pipe\"") { kind, date, note };
        chooser.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var what = MoveKind.Of(line.GetRequiredValue(kind))!;
            var done = register.RecordMishap.Run(chooser.Read(line), what, line.GetValue(date), line.GetValue(note));
            var day = context.DayOf(line.GetValue(date));

            return new Recorded(MovesSaid.Befell(done, what, day), json =>
            {
                json.WriteNumber("sheets", done.Sheets);
                json.WriteString("kind", what.Word);
                json.Date("date", day);
                json.Texts("withdrawn", done.Withdrawn);
            });
        }));

        return command;
    }
}
