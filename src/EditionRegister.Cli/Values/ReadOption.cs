using System.CommandLine;
using System.CommandLine.Parsing;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>An option whose value may be written in words, and which says how they were read.</summary>
internal interface IReadOption
{
    /// <summary>How the value was read, where something was read into it; else null.</summary>
    /// <param name="given">As it was typed.</param>
    /// <param name="own">The register's own words, fetched only where they are needed.</param>
    string? ReadAs(OptionResult given, Func<OwnWords> own);
}

/// <summary>An option whose value may be written in words.</summary>
/// <param name="name">The option.</param>
/// <param name="inOtherWords">How a value was read, with the register's own words; null where it says it plainly itself.</param>
internal sealed class ReadOption<T>(string name, Func<T?, Func<OwnWords>, string?> inOtherWords) : Option<T>(name), IReadOption
{
    public ReadOption(string name, Func<T?, string?> inOtherWords)
        : this(name, (value, _) => inOtherWords(value))
    {
    }

    public string? ReadAs(OptionResult given, Func<OwnWords> own) => inOtherWords(given.GetValueOrDefault<T>(), own);
}
