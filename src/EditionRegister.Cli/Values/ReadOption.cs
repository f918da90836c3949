using System.CommandLine;
using System.CommandLine.Parsing;

namespace EditionRegister.Cli;

/// <summary>An option whose value may be written in words, and which says how they were read.</summary>
internal interface IReadOption
{
    /// <summary>How the value was read, where something was read into it; else null.</summary>
    string? ReadAs(OptionResult given);
}

/// <summary>An option whose value may be written in words.</summary>
/// <param name="name">The option.</param>
/// <param name="inOtherWords">How a value was read; null where it says it plainly itself.</param>
internal sealed class ReadOption<T>(string name, Func<T?, string?> inOtherWords) : Option<T>(name), IReadOption
{
    public string? ReadAs(OptionResult given) => inOtherWords(given.GetValueOrDefault<T>());
}
