using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg shows</c>: exhibitions, sales and fairs with what is listed for them.</summary>
internal static class ShowsCommand
{
    public static Command Create(CommandContext context) => new CommandWithExample("shows", "Records exhibitions, sales and fairs, and lists impressions for them. One impression is shown by `edreg show CODE`.", "edreg shows list")
    {
        ShowsListCommand.Create(context),
        ShowsMakeCommand.Create(context),
        ShowsEditCommand.Create(context),
        ShowsSeeCommand.Create(context),
        ShowsAddCommand.Create(context),
        ShowsRemoveCommand.Create(context),
    };
}
