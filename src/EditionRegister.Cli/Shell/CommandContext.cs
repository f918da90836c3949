using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary>What every command is given: the machine, where to write, the options all commands share.</summary>
internal sealed class CommandContext(AppServices services, TextWriter output, TextWriter error)
{
    public AppServices Services { get; } = services;

    public TextWriter Output { get; } = output;

    /// <summary>For refusals and for progress on long work, never for results.</summary>
    public TextWriter Error { get; } = error;

    public GlobalOptions Global { get; } = new();

    public bool IsJson { get; set; }

    /// <summary>The register's folder once a command has asked for it; its log takes the trace of a bug.</summary>
    public string? KnownRegister { get; private set; }

    /// <summary>Where this command prints its results.</summary>
    public Printer Printer() => new(Output, IsJson);

    /// <summary>The folder of the register the command is about.</summary>
    /// <exception cref="Domain.RefusedException">register-not-found.</exception>
    public string RegisterFolder(ParseResult line) => KnownRegister = RegisterFinder.Find(line.GetValue(Global.Register), Services);

    /// <summary>The id of the person named by --by, or null for the one the register's settings name.</summary>
    public long? By(ParseResult line) => line.GetValue(Global.By);
}
