using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg vary</c>: says how sheets differ from the others of their edition.</summary>
internal static class VaryCommand
{
    public static Command Create(CommandContext context) => WordsOfSheetsCommand.Create(
        context,
        new CommandWithExample("vary", "Says how sheets differ from the others of their edition.", "edreg vary --edition 3 --sheets 2 --as \"wiped in ochre\""),
        Opt.Text("--as", "TEXT", "How they differ: the ink, the paper, the wiping."),
        "variant",
        (register, choice, said) => register.VarySheets.Run(choice, said),
        SheetSaid.Varied);
}
