using System.CommandLine;
using System.CommandLine.Parsing;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>An option whose value may be written in words, and which says how they were read.</summary>
internal interface IReadOption
{
    /// <summary>Every value that something was read into, with how it was read.</summary>
    /// <param name="given">What was typed.</param>
    /// <param name="own">The register's own kinds, asked for only where they are needed.</param>
    IEnumerable<(string Text, string ReadAs)> Readings(OptionResult given, Func<OwnWords> own);
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

    public IEnumerable<(string Text, string ReadAs)> Readings(OptionResult given, Func<OwnWords> own) =>
        inOtherWords(given.GetValueOrDefault<T>(), own) is { } read ? [(string.Join(' ', given.Tokens.Select(token => token.Value)), read)] : [];
}
