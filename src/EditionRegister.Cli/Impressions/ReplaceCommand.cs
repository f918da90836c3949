using System.CommandLine;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Cli;

/// <summary><c>edreg replace</c>: gives the number of a damaged sheet to a spare.</summary>
internal static class ReplaceCommand
{
    public static Command Create(CommandContext context)
    {
        var code = Arg.Code("The sheet that is damaged, destroyed or was never right.");
        var by = Opt.Text("--by", "CODE", "The unsigned spare that gets its number.");
        by.Required = true;
        var fault = Opt.Text("--fault", "FAULT", "What is wrong with the old sheet: crease, tear, stain. Needed unless it is recorded as destroyed.");
        var date = Opt.Date("--date", "When. Else today.");
        var reason = Opt.Text("--reason", "TEXT", "The story.");
        CommandWithExample command = new("replace", "Gives the number of a sheet that is damaged, destroyed or was never right to an unsigned spare. No number is made; both sheets keep the story.", "edreg replace 7KQ4-M2X3 --by H4RB-22R4 --fault crease --reason \"creased at the framer's\"") { code, by, fault, date, reason };

        command.SetAction(line => context.Record(line, register =>
        {
            var (old, spare) = (line.GetRequiredValue(code), line.GetRequiredValue(by)!);
            var before = register.LookAround.Impression(old).Impression;
            register.ReplaceSheet.Run(old, spare, new Replacement { Fault = line.GetValue(fault), Date = line.GetValue(date) ?? RecordedDate.None, Reason = line.GetValue(reason) });
            var seen = register.LookAround.Impression(spare);

            return new Recorded(SheetSaid.Replaced(seen.Work, before, seen.Impression), json =>
            {
                json.WriteString("replaced", before.ShownCode);
                json.WriteString("by", seen.Impression.ShownCode);
                json.WriteString("number", seen.Work.NumberingOf(seen.Impression)?.Spell(seen.Impression.Number));
                json.WriteString("certificate_withdrawn", before.ValidCertificate?.Serial);
            });
        }));

        return command;
    }
}
