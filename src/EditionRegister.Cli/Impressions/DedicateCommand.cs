using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg dedicate</c>: records to whom copies are dedicated, as it stands on them.</summary>
internal static class DedicateCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var words = Opt.Text("--to", "TEXT", "The dedication, as it stands on the sheet.");
        var clear = Opt.Flag("--take-back", "Take back what was said of them.");
        CommandWithExample command = new("dedicate", "Records to whom copies are dedicated, as it stands on them.", "edreg dedicate --edition 3 --sheets \"A/P I\" --to \"for Joost, with thanks\"");
        chooser.AddTo(command);
        command.Add(words);
        command.Add(clear);

        command.SetAction(line => context.Record(line, register =>
        {
            var said = line.GetValue(words);

            if (line.GetValue(clear) == said is not null)
            {
                throw new WrongUsageException("Say it with --to, or take it back with --take-back: one of them.");
            }

            var sheets = register.DedicateSheets.Run(chooser.Read(line), said);

            return new Recorded(SheetSaid.Dedicated(sheets, said), json =>
            {
                json.WriteNumber("sheets", sheets);
                json.WriteString("dedication", said);
            });
        }));

        return command;
    }
}
