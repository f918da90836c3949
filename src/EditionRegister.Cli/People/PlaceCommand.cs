using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg place</c>: the places where things lie.</summary>
internal static class PlaceCommand
{
    public static Command Create(CommandContext context) => new CommandWithExample("place", "Records places, and shows what lies in them.", "edreg place list")
    {
        PlaceAddCommand.Create(context),
        PlaceListCommand.Create(context),
        PlaceShowCommand.Create(context),
        PlaceEditCommand.Create(context),
    };
}
