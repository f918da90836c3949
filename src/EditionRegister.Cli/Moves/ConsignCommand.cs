using System.CommandLine;
using EditionRegister.Domain.Dates;

namespace EditionRegister.Cli;

/// <summary><c>edreg consign</c>: gives sheets into consignment.</summary>
internal static class ConsignCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var to = Opt.Text("--to", "WHO", "To whom: a name or number of the address book.");
        to.Required = true;
        var date = Opt.Date("--date", "When. Else today.");
        var until = Opt.Date("--until", "Until when.");
        var rate = ShareOption.Create("--rate", "The consignee's share of the price, in per cent.");
        var agreement = Opt.Text("--agreement", "TEXT", "The agreement under which they go.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("consign", "Gives sheets into consignment: they are away, and stay their owner's.", "edreg consign --edition 3 --sheets 5-8 --to \"Quay Gallery\" --until 2026-12-31 --rate 40");
        chooser.AddTo(command);
        command.Add(to);
        command.Add(date);
        command.Add(until);
        command.Add(rate);
        command.Add(agreement);
        command.Add(note);

        command.SetAction(line => context.Record(line, register =>
        {
            var (share, end) = (line.GetValue(rate), line.GetValue(until) ?? RecordedDate.None);
            var sheets = register.Consign.Run(chooser.Read(line), line.GetRequiredValue(to)!, line.GetValue(date), line.GetValue(until), share, line.GetValue(note), line.GetValue(agreement));
            var name = Names.Of(register, line.GetRequiredValue(to)!);
            var day = context.DayOf(line.GetValue(date));

            return new Recorded(SheetSaid.Consigned(sheets, name, day, end, share, line.GetValue(agreement)), json =>
            {
                json.WriteNumber("sheets", sheets);
                json.WriteString("to", name);
                json.Date("date", day);
                json.Date("until", end);
                json.Whole("share_in_hundredths_of_a_per_cent", share);
                json.WriteString("agreement", line.GetValue(agreement));
            });
        }));

        return command;
    }
}
