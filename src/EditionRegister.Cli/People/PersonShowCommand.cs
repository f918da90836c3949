using System.CommandLine;
using EditionRegister.UseCases.People;

namespace EditionRegister.Cli;

/// <summary><c>edreg person show</c>: shows someone with what they made, have and own.</summary>
internal static class PersonShowCommand
{
    public static Command Create(CommandContext context)
    {
        var who = Arg.Text("WHO", "A name or number of the address book.");
        CommandWithExample command = new("show", "Shows someone of the address book: what they made, what they have, what they own.", "edreg person show \"Mira Tolland\"") { who };

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var book = register.LookAround.Book();
            var person = book.People[Persons.Find(book, line.GetRequiredValue(who))];
            PersonPage page = new(person, register.LookAround.Works());
            printer.Show(text: () => page.Print(printer), json: page.Write);
        }));

        return command;
    }
}
