using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg ghost</c>: says that a sheet is the ghost of another.</summary>
internal static class GhostCommand
{
    public static Command Create(CommandContext context)
    {
        var code = Arg.Code("The paler sheet, pulled without inking the plate anew.");
        var of = Opt.Text("--of", "CODE", "The sheet pulled before it.");
        var date = Opt.Date("--date", "When it was pulled. Else not known.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        var takeBack = Opt.Flag("--take-back", "It was recorded by mistake.");
        CommandWithExample command = new("ghost", "Says that a sheet is the ghost of another: pulled after it from the same plate, a unique print of its own.", "edreg ghost H4RB-22R4 --of 7KQ4-M2X3") { code, of, date, note, takeBack };

        command.SetAction(line => context.Record(line, register =>
        {
            var (ghost, print) = (line.GetRequiredValue(code), line.GetValue(of));

            if (line.GetValue(takeBack) == print is not null)
            {
                throw new WrongUsageException("Say with --of which sheet it is the ghost of, or with --take-back that it is none: one of them.");
            }

            var done = print is null ? register.LinkGhost.TakeBack(ghost) : register.LinkGhost.Run(ghost, print, line.GetValue(date), line.GetValue(note));
            var sheet = register.LookAround.Impression(ghost).Impression.ShownCode;
            var other = print is null ? null : register.LookAround.Impression(print).Impression.ShownCode;

            return new Recorded(SheetSaid.Ghost(sheet, other), json =>
            {
                json.WriteString("ghost", sheet);
                json.WriteString("of", other);
                json.WriteBoolean("done", done);
            });
        }));

        return command;
    }
}
