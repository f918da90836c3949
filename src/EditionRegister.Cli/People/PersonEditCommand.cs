using System.CommandLine;
using EditionRegister.Domain.People;
using EditionRegister.UseCases.People;

namespace EditionRegister.Cli;

/// <summary><c>edreg person edit</c>: puts right what the address book says of someone.</summary>
internal static class PersonEditCommand
{
    public static Command Create(CommandContext context)
    {
        var who = Arg.Text("WHO", "The name or number of the person.");
        var name = Opt.Text("--name", "NAME", "The name, put right.");
        var sortName = Opt.Text("--sort-name", "NAME", "Family name first. Else worked out from a new name.");
        var isProtected = Opt.Word("--protected", ["yes", "no"], "A pupil, or anyone whose name is not for everybody.");
        var policy = Opt.Word("--public-name", PublicNamePolicy.Words, "How much of the name is shown in public.");
        var wording = Opt.Text("--wording", "TEXT", "What is shown in public instead of the name.");
        var classCode = Opt.Text("--class-code", "CODE", "A code that only the class can resolve.");
        var contact = Opt.Text("--contact", "TEXT", "Where to reach them.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        var seen = Opt.Id("--seen", "an entry", "The entry that had last written the person when you looked; a change made since is then refused.");
        CommandWithExample command = new("edit", "Puts right what the address book says of someone.", "edreg person edit 5 --name \"Inés Vargøy\"")
        {
            who, name, sortName, isProtected, policy, wording, classCode, contact, note, seen,
        };

        command.SetAction(line => context.Record(line, register =>
        {
            PersonCorrection correction = new()
            {
                Name = line.GetValue(name),
                SortName = line.GetValue(sortName),
                IsProtected = line.GetValue(isProtected) is { } word ? word == "yes" : null,
                PublicName = line.GetValue(policy),
                Wording = line.GetValue(wording),
                ClassCode = line.GetValue(classCode),
                Contact = line.GetValue(contact),
                Note = line.GetValue(note),
            };

            if (correction == new PersonCorrection())
            {
                throw new WrongUsageException("Nothing is said that would be put right: give --name, --public-name or another option.");
            }

            var id = register.EditPerson.Run(line.GetRequiredValue(who), correction, line.GetValue(seen));
            var person = register.LookAround.Book().People[id];

            return new Recorded(AddressBookSaid.PutRight(person), json => PersonJson.WriteHead(json, person));
        }));

        return command;
    }
}
