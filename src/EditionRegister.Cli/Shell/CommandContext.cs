using System.CommandLine;
using System.Globalization;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Text;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases;
using EditionRegister.UseCases.People;

namespace EditionRegister.Cli;

/// <summary>What every command is given: the machine, where to write, the options all commands share.</summary>
internal sealed class CommandContext(AppServices services, TextWriter output, TextWriter error)
{
    private Register? _opened;

    public AppServices Services { get; } = services;

    public TextWriter Output { get; } = output;

    /// <summary>For refusals and for progress on long work, never for results.</summary>
    public TextWriter Error { get; } = error;

    public GlobalOptions Global { get; } = new();

    public bool IsJson { get; set; }

    /// <summary>The register's folder once a command has asked for it; its log takes the trace of a bug.</summary>
    public string? KnownRegister { get; private set; }

    /// <summary>The words of the register that a command has opened; none before.</summary>
    public OwnWords OwnWords() => _opened?.LookAround.OwnWords() ?? Domain.Works.OwnWords.None;

    /// <summary>Where this command prints its results.</summary>
    public Printer Printer() => new(Output, IsJson);

    /// <summary>The folder of the register the command is about.</summary>
    /// <exception cref="Domain.RefusedException">register-not-found.</exception>
    public string RegisterFolder(ParseResult line) => KnownRegister = RegisterFinder.Find(line.GetValue(Global.Register), Services);

    /// <summary>The id of the person named by --by, or null for the one the register's settings name.</summary>
    public long? By(ParseResult line) => line.GetValue(Global.By) is { } number ? long.Parse(number, CultureInfo.InvariantCulture) : null;

    /// <summary>The register the command is about, open.</summary>
    /// <exception cref="Domain.RefusedException">It is not there, cannot be opened, or does not know the person named by --by.</exception>
    public Register Open(ParseResult line)
    {
        var register = _opened = Register.Open(new RegisterFolder(RegisterFolder(line)), Surroundings(), By(line));

        return By(line) is { } by && register.LookAround.Book().Person(by) is null ? throw PeopleRefusals.NotFound(Counted.Figure(by)) : register;
    }

    /// <summary>What the register takes from the machine; its notices go where refusals go.</summary>
    public Surroundings Surroundings() => new(Services.Time, Services.Randomness, sentence => Error.WriteLine(SafeText.Show(sentence)));

    /// <summary>The date given, or today, as deeds are dated when nothing else is said.</summary>
    public RecordedDate DayOf(RecordedDate? given) => given ?? RecordedDate.On(DateOnly.FromDateTime(Services.Time.GetLocalNow().DateTime));

    /// <summary>A path as typed, seen from the folder the program was started in; null stays null.</summary>
    public string? PathOf(string? typed) => typed is null ? null : Path.GetFullPath(typed, Services.CurrentDirectory);

    /// <summary>A path as a person would type it here: short where it lies in the folder the program was started in.</summary>
    public string Shown(string path)
    {
        var relative = Path.GetRelativePath(Services.CurrentDirectory, path);

        return relative.StartsWith("..", StringComparison.Ordinal) ? path : relative;
    }

    /// <summary>Opens the register, does a deed, and says in one sentence what was recorded.</summary>
    public int Record(ParseResult line, Func<Register, Recorded> deed)
    {
        deed(Open(line)).Print(Printer(), HelpText.Words(line.CommandResult.Command));

        return ExitCode.Done;
    }

    /// <summary>Opens the register and prints what is asked for.</summary>
    public int Look(ParseResult line, Action<Register, Printer> look)
    {
        look(Open(line), Printer());

        return ExitCode.Done;
    }
}
