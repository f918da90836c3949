using EditionRegister.Domain.People;
using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg person add</c>: puts someone into the address book.</summary>
internal static class PersonAddCommand
{
    public static Command Create(CommandContext context)
    {
        PersonOptions options = new();
        CommandWithExample command = new("add", "Puts someone into the address book: a maker, a pupil, a printer, a buyer, a gallery, a school.", "edreg person add \"Elsie Marrowby\" --protected --public-name given --class-code 8B-04");
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var id = register.RecordPerson.Run(options.Read(line));
            var person = register.LookAround.Book().People[id];

            return new Recorded(AddressBookSaid.Recorded(person), json => PersonJson.WriteHead(json, person))
            {
                More = person.IsProtected ? printer => printer.Line(AddressBookSaid.AboutPupils) : null,
            };
        }));

        return command;
    }
}
