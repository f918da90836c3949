using System.CommandLine;
using EditionRegister.Domain.People;

namespace EditionRegister.Cli;

/// <summary><c>edreg person list</c>: lists the address book.</summary>
internal static class PersonListCommand
{
    private static readonly Column[] Columns = [new("person", IsRight: true), new("name"), new("what"), new("in public"), new("contact")];

    public static Command Create(CommandContext context)
    {
        CommandWithExample command = new("list", "Lists everyone in the address book, with their numbers.", "edreg person list");

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            List<Person> people = [.. register.LookAround.Book().People.Values.OrderBy(person => person.Id)];
            printer.Show(
                text: () =>
                {
                    printer.Table(Columns, people.Select(person => (string[])[Counted.Figure(person.Id), person.FullName, What(person), person.PublicText, person.Contact ?? ""]));
                    printer.Line($"{Counted.Of(people.Count, "person or organisation", "people and organisations")}.");
                },
                json: json => json.Each("people", people, person => PersonJson.WriteHead(json, person)));
        }));

        return command;
    }

    private static string What(Person person) => person.IsProtected ? $"{person.What}, protected" : person.What;
}
