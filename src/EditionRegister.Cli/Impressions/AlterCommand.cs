using System.CommandLine;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Cli;

/// <summary><c>edreg alter</c>: records that something was changed on the sheet itself.</summary>
internal static class AlterCommand
{
    public static Command Create(CommandContext context)
    {
        var code = Arg.Code("The sheet.");
        var what = Opt.Word("--what", Alteration.Whats, "What was altered.");
        var was = Opt.Text("--was", "TEXT", "What stood there, letter by letter. Else what is on record.");
        var became = Opt.Words("--became", "TEXT", "What stands there now, letter by letter.", (text, own, given) => given.GetValue(what) switch
        {
            "number" => InscriptionSaid.OfNumber(text, own),
            "inscription" => InscriptionSaid.OfTyped(text, own),
            _ => null,
        });
        var rubbedOut = Opt.Flag("--rubbed-out", "Nothing stands there now.");
        var reason = Opt.Text("--reason", "TEXT", "Why it was altered.");
        var date = Opt.Date("--date", "When. Else today.");
        var takeBack = Opt.Flag("--take-back", "The last change on record was never made on the sheet.");
        CommandWithExample command = new("alter", "Records that something was changed on the sheet itself. A record that was mistyped is corrected with `edreg inscribe`.", "edreg alter 7KQ4-M2X3 --what number --became 5/12 --reason \"numbered twice\"") { code, what, was, became, rubbedOut, reason, date, takeBack };

        command.SetAction(line => context.Record(line, register =>
        {
            var sheet = line.GetRequiredValue(code);

            if (line.GetValue(takeBack))
            {
                if ((line.GetValue(what) ?? line.GetValue(was) ?? line.GetValue(became) ?? line.GetValue(reason)) is not null || line.GetValue(rubbedOut) || line.GetValue(date) is not null)
                {
                    throw new WrongUsageException("--take-back takes the last change back and records none, so it goes alone.");
                }

                register.AlterSheet.TakeBack(sheet);
                var before = register.LookAround.Impression(sheet).Impression;

                return new Recorded(SortingSaid.AlterationTakenBack(before), json => json.WriteString("code", before.ShownCode));
            }

            register.AlterSheet.Run(sheet, Read(line, what, was, became, rubbedOut, reason, date));
            var now = register.LookAround.Impression(sheet).Impression;
            var change = now.Changes[^1];

            return new Recorded(SortingSaid.Altered(now, change), json =>
            {
                json.WriteString("code", now.ShownCode);
                json.WriteString("what", change.What);
                json.WriteString("was", change.Was);
                json.WriteString("became", change.Became);
                json.WriteString("reason", change.Reason);
                json.Date("date", change.Changed);
            });
        }));

        return command;
    }

    private static Alteration Read(ParseResult line, Option<string?> what, Option<string?> was, Option<string?> became, Option<bool> rubbedOut, Option<string?> reason, Option<RecordedDate?> date)
    {
        if (line.GetValue(became) is null != line.GetValue(rubbedOut))
        {
            throw new WrongUsageException("Say what stands there now with --became, or that nothing does with --rubbed-out.");
        }

        return new Alteration
        {
            What = line.GetValue(what) ?? throw new WrongUsageException("Say what was altered with --what: number, title, signature, inscription or other."),
            Was = line.GetValue(was),
            Became = line.GetValue(became),
            Reason = line.GetValue(reason),
            Changed = line.GetValue(date) ?? RecordedDate.None,
        };
    }
}
