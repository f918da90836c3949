using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg dedicate</c>: records to whom copies are dedicated, as it stands on them.</summary>
internal static class DedicateCommand
{
    public static Command Create(CommandContext context) => WordsOfSheetsCommand.Create(
        context,
        new CommandWithExample("dedicate", "Records to whom copies are dedicated, as it stands on them.", "edreg dedicate --edition 3 --sheets \"A/P I\" --to \"for Joost, with thanks\""),
        Opt.Text("--to", "TEXT", "The dedication, as it stands on the sheet."),
        "dedication",
        (register, choice, said) => register.DedicateSheets.Run(choice, said),
        SheetSaid.Dedicated);
}
