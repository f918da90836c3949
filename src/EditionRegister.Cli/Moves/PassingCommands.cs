using System.CommandLine;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;

namespace EditionRegister.Cli;

/// <summary><c>edreg give</c>, <c>edreg exchange</c> and <c>edreg bequeath</c>: sheets pass to another owner without being sold.</summary>
internal static class PassingCommands
{
    public static Command Give(CommandContext context) => Create(context, MoveKind.Given,
        new("give", "Records that sheets were given to somebody: they belong to them from then on.", "edreg give --edition 3 --sheets 2 --to \"Joost Averink\" --collected"));

    public static Command Exchange(CommandContext context) => Create(context, MoveKind.Exchanged,
        new("exchange", "Records that sheets were exchanged with somebody for something else.", "edreg exchange --edition 3 --sheets 4 --to \"Ada Brook\" --against \"her Kite, 2/10\""));

    public static Command Bequeath(CommandContext context) => Create(context, MoveKind.Bequeathed,
        new("bequeath", "Records that sheets passed to an heir or an estate, whoever owned them.", "edreg bequeath --sheets 7KQ4-M2X3 --to \"Tolland Estate\""));

    private static CommandWithExample Create(CommandContext context, MoveKind kind, CommandWithExample command)
    {
        ChooserOptions chooser = new();
        var to = Opt.Text("--to", "WHO", "To whom: a name or number of the address book.");
        var toUnknown = Opt.Flag("--to-unknown", "Nobody knows to whom.");
        var from = Opt.Text("--from", "WHO", kind == MoveKind.Bequeathed ? "The owner it passed from. Else whoever owns it." : "The owner who gave it. Else the maker.");
        var against = Opt.Text("--against", "TEXT", "What it was exchanged for.");
        var date = Opt.Date("--date", "When. Else today.");
        var collected = Opt.Flag("--collected", "They took it along.");
        var despite = Opt.Flag("--despite-reservation", "Also where it is reserved for, or on approval with, somebody else.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        chooser.AddTo(command);

        foreach (var option in new Option[] { to, toUnknown, from, date, collected, note })
        {
            command.Add(option);
        }

        if (kind == MoveKind.Exchanged)
        {
            command.Add(against);
        }

        if (kind != MoveKind.Bequeathed)
        {
            command.Add(despite);
        }

        command.SetAction(line => context.Record(line, register =>
        {
            var who = line.GetValue(to);

            if (who is null != line.GetValue(toUnknown))
            {
                throw new WrongUsageException("Say to whom: --to, or --to-unknown where nobody knows; one of the two.");
            }

            var what = kind == MoveKind.Exchanged ? line.GetValue(against) : null;
            var sheets = register.PassSheets.Run(chooser.Read(line), who, line.GetValue(from), new Passing(kind, null)
            {
                Date = line.GetValue(date) ?? RecordedDate.None,
                Against = what,
                Collected = line.GetValue(collected),
                DespiteReservation = kind != MoveKind.Bequeathed && line.GetValue(despite),
                Note = line.GetValue(note),
            });
            var name = who is null ? null : Names.Of(register, who);
            var day = context.DayOf(line.GetValue(date));

            return new Recorded(MovesSaid.Passed(sheets, kind, name, what, day), json =>
            {
                json.WriteNumber("sheets", sheets);
                json.WriteString("to", name);
                json.WriteString("against", what);
                json.Date("date", day);
                json.WriteBoolean("collected", line.GetValue(collected));
            });
        }));

        return command;
    }
}
