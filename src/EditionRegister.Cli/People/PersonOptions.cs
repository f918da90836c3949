using System.CommandLine;
using EditionRegister.Domain.People;
using EditionRegister.UseCases.People;

namespace EditionRegister.Cli;

/// <summary>What is said of someone who is recorded.</summary>
internal sealed class PersonOptions
{
    private readonly Argument<string> _name = Arg.Text("NAME", "The name as it is written: Mira Tolland.");
    private readonly Option<bool> _organisation = Opt.Flag("--organisation", "A workshop, gallery or school.");
    private readonly Option<bool> _protected = Opt.Flag("--protected", "A pupil, or anyone whose name is not for everybody.");
    private readonly Option<string?> _policy = Opt.Word("--public-name", PublicNamePolicy.Words, "How much of the name is shown in public. Else full, or initials for a protected person.");
    private readonly Option<string?> _wording = Opt.Text("--wording", "TEXT", "What is shown in public instead of the name: private collection.");
    private readonly Option<string?> _classCode = Opt.Text("--class-code", "CODE", "A code that only the class can resolve.");
    private readonly Option<string?> _sortName = Opt.Text("--sort-name", "NAME", "Family name first: Tolland, Mira. Else the last word is taken for it.");
    private readonly Option<string?> _contact = Opt.Text("--contact", "TEXT", "Where to reach them.");
    private readonly Option<string?> _note = Opt.Text("--note", "TEXT", "Anything else.");
    private readonly Option<bool> _another = Opt.Flag("--another", "Somebody else of a name that is in the address book already.");

    public void AddTo(Command command)
    {
        command.Add(_name);

        foreach (var option in new Option[] { _organisation, _protected, _policy, _wording, _classCode, _sortName, _contact, _note, _another })
        {
            command.Add(option);
        }
    }

    public NewPerson Read(ParseResult line) => new()
    {
        Name = line.GetRequiredValue(_name),
        IsOrganisation = line.GetValue(_organisation),
        IsProtected = line.GetValue(_protected),
        PublicName = line.GetValue(_policy),
        Wording = line.GetValue(_wording),
        ClassCode = line.GetValue(_classCode),
        SortName = line.GetValue(_sortName),
        Contact = line.GetValue(_contact),
        Note = line.GetValue(_note),
        IsAnother = line.GetValue(_another),
    };
}
