using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg sign done</c>: the next sheet, or those named, are signed as spelled.</summary>
internal static class SignDoneCommand
{
    public static Command Create(CommandContext context)
    {
        var edition = Arg.Id("EDITION", "The number of the edition.");
        var numbers = Opt.Ranges("--numbers", "NUMBERS", "Which of its numbers: 6-8, A/P I. Else the next one.");
        var signature = Opt.Text("--signature", "TEXT", "How the signature reads. Else as before in this work, or the maker's name.");
        CommandWithExample command = new("done", "Records that number, title and signature stand on the next sheet as spelled, or on those named; then spells the next.", "edreg sign done 3 --numbers 6-8 --signature \"M. Tolland\"") { edition, numbers, signature };

        command.SetAction(line => context.Record(line, register =>
        {
            var signed = register.SignSheets.Done(line.GetValue(edition)!.Value, line.GetValue(numbers), line.GetValue(signature));
            var seen = register.SignSheets.Left(line.GetValue(edition)!.Value, line.GetValue(signature));

            return new Recorded(SortingSaid.Signed(seen.Work, signed), json =>
            {
                json.Each("signed", signed, one => SignNextCommand.Write(json, one.Sheet, one.Pencil));
                json.WriteNumber("left", seen.Left.Count);
                json.WriteString("next", seen.Left is [var next, ..] ? next.Pencil.Number : null);
            })
            {
                More = printer => printer.Line(SortingSaid.Left(seen)),
            };
        }));

        return command;
    }
}
