using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary>A command whose help shows a line to copy. Every command of ours is one.</summary>
internal sealed class CommandWithExample(string name, string description, string example) : Command(name, description)
{
    /// <summary>A whole line as typed, beginning with "edreg".</summary>
    public string Example { get; } = example;
}
