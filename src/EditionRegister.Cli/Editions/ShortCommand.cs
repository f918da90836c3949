using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg short</c>: ends an edition of which fewer were printed than declared.</summary>
internal static class ShortCommand
{
    private static readonly Column[] Columns = [new("code"), new("pencil anew")];

    public static Command Create(CommandContext context)
    {
        var edition = Arg.Id("EDITION", "The number of the edition.");
        var note = Opt.Text("--note", "TEXT", "Why no more were printed.");
        CommandWithExample command = new("short", "Ends an edition of which fewer were printed than declared: the size is set anew while nothing is signed or has left, and afterwards it is disclosed which numbers were never printed.", "edreg short 3 --note \"the block split\"") { edition, note };

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(edition)!.Value;
            var fell = register.EndShort.Run(id, line.GetValue(note));
            var (work, found) = register.LookAround.Edition(id);
            var anew = fell.ToPencilAnew.Select(sheet => (Code: sheet.ShownCode, Number: work.NumberOf(work.Impressions.First(one => one.Id == sheet.Id)))).ToList();

            return new Recorded(EditionSaid.Short(work, found, fell), json =>
            {
                json.WriteNumber("edition", id);
                json.WriteString("fell_short", fell.Word);
                json.WriteNumber("never_printed", fell.NeverPrinted);
                json.Whole("size", found.Size);
                json.Each("to_pencil_anew", anew, one =>
                {
                    json.WriteString("code", one.Code);
                    json.WriteString("number", one.Number);
                });
            })
            {
                More = printer =>
                {
                    if (anew.Count > 0)
                    {
                        printer.Table(Columns, anew.Select(one => (string[])[one.Code, one.Number]));
                    }
                },
            };
        }));

        return command;
    }
}
