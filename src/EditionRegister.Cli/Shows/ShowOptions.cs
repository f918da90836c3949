using System.CommandLine;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Shows;
using EditionRegister.UseCases;
using EditionRegister.UseCases.People;

namespace EditionRegister.Cli;

/// <summary>What can be said of a show, when it is made and when it is put right.</summary>
internal sealed class ShowOptions(string otherwiseKind)
{
    private readonly Option<string?> _kind = Opt.Word("--kind", ShowKind.Words, $"What kind of show it is.{otherwiseKind}");
    private readonly Option<string?> _place = Opt.Text("--place", "PLACE", "Where it is held: the end of a place's path is enough.");
    private readonly Option<string?> _host = Opt.Text("--host", "WHO", "Who holds it: a name or number of the address book.");
    private readonly Option<RecordedDate?> _opens = Opt.Date("--opens", "When it opens.");
    private readonly Option<RecordedDate?> _closes = Opt.Date("--closes", "When it closes.");
    private readonly Option<string?> _note = Opt.Text("--note", "TEXT", "Anything else.");

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _kind, _place, _host, _opens, _closes, _note })
        {
            command.Add(option);
        }
    }

    /// <exception cref="Domain.RefusedException">The place or the host is not known, or more than one is called so.</exception>
    public ShowCorrection Read(ParseResult line, Register register, string? name)
    {
        var (place, host) = (line.GetValue(_place), line.GetValue(_host));
        var book = place is null && host is null ? null : register.LookAround.Book();

        return new ShowCorrection
        {
            Name = name,
            Kind = line.GetValue(_kind),
            Place = place is null ? null : Places.Find(book!, place),
            Host = host is null ? null : Persons.Find(book!, host),
            Opens = line.GetValue(_opens),
            Closes = line.GetValue(_closes),
            Note = line.GetValue(_note),
        };
    }
}
