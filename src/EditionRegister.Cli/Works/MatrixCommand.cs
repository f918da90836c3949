using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg matrix</c>: everything about blocks, plates, stones and screens.</summary>
internal static class MatrixCommand
{
    public static Command Create(CommandContext context) => new CommandWithExample("matrix", "Records what works are printed from, and what becomes of it.", "edreg matrix add 3 --what block --material lino --reduction")
    {
        MatrixAddCommand.Create(context),
        MatrixEditCommand.Create(context),
        MatrixStateCommand.Create(context),
        MatrixFateCommand.Create(context),
        MatrixListCommand.Create(context),
    };
}
