using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg vary</c>: says how sheets differ from the others of their edition.</summary>
internal static class VaryCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var words = Opt.Text("--as", "TEXT", "How they differ: the ink, the paper, the wiping.");
        var clear = Opt.Flag("--take-back", "Take back what was said of them.");
        CommandWithExample command = new("vary", "Says how sheets differ from the others of their edition.", "edreg vary --edition 3 --sheets 2 --as \"wiped in ochre\"");
        chooser.AddTo(command);
        command.Add(words);
        command.Add(clear);

        command.SetAction(line => context.Record(line, register =>
        {
            var said = line.GetValue(words);

            if (line.GetValue(clear) == said is not null)
            {
                throw new WrongUsageException("Say it with --as, or take it back with --take-back: one of them.");
            }

            var sheets = register.VarySheets.Run(chooser.Read(line), said);

            return new Recorded(SheetSaid.Varied(sheets, said), json =>
            {
                json.WriteNumber("sheets", sheets);
                json.WriteString("variant", said);
            });
        }));

        return command;
    }
}
