using System.CommandLine;
using System.Globalization;
using EditionRegister.UseCases.Moves;

namespace EditionRegister.Cli;

/// <summary><c>edreg due</c>: lists what is over or soon will be.</summary>
internal static class DueCommand
{
    public static Command Create(CommandContext context)
    {
        var on = Opt.Date("--on", "The day looked at. Else today.");
        var within = Opt.Count("--within", FormattableString.Invariant($"How many days ahead. Else {ListDue.UsualDays}."));
        CommandWithExample command = new("due", "Lists what is to be back, collected, answered for or let go: consigned, lent, on approval, away, awaiting collection, reserved.", "edreg due --on 2026-12-31 --within 14") { on, within };

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            // Of a month or a year, its last day: everything that ends in it is looked at.
            var listed = register.ListDue.Run(line.GetValue(on)?.Latest, line.GetValue(within) ?? ListDue.UsualDays);
            printer.Show(
                text: () =>
                {
                    if (listed.Sheets.Count > 0)
                    {
                        printer.Table([.. DueShown.Columns.Select(column => new Column(column.Head, column.IsRight))], listed.Sheets.Select(DueShown.Row));
                    }

                    printer.Line(DueShown.InShort(listed));
                },
                json: json =>
                {
                    json.WriteString("on", listed.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
                    json.WriteNumber("days", listed.Days);
                    json.Each("due", listed.Sheets, due =>
                    {
                        json.WriteString("code", due.Sheet.ShownCode);
                        json.WriteString("number", due.Work.NumberOf(due.Sheet));
                        json.WriteString("title", due.Work.ShownTitle);
                        json.WriteString("what", due.What);
                        json.WriteString("person", DueShown.PersonOf(due));
                        json.Date("until", due.Until);
                        json.WriteBoolean("over", due.HasPassed);
                    });
                });
        }));

        return command;
    }
}
