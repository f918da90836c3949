using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg person</c>: the people of the address book.</summary>
internal static class PersonCommand
{
    public static Command Create(CommandContext context) => new CommandWithExample("person", "Records people and organisations, and shows them.", "edreg person list")
    {
        PersonAddCommand.Create(context),
        PersonListCommand.Create(context),
        PersonShowCommand.Create(context),
        PersonEditCommand.Create(context),
    };
}
