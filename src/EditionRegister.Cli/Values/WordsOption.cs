using System.CommandLine;
using System.CommandLine.Parsing;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>How a text typed for an option is read, with the register's own kinds; null where it says plainly what it says.</summary>
internal delegate string? ReadWords(string text, OwnWords own, OptionResult given);

/// <summary>An option that takes a text, or several, which stay as written and are read beside.</summary>
/// <param name="name">The option.</param>
/// <param name="inOtherWords">How a text is read.</param>
internal sealed class WordsOption<T>(string name, ReadWords inOtherWords) : Option<T>(name), IReadOption
{
    public IEnumerable<(string Text, string ReadAs)> Readings(OptionResult given, Func<OwnWords> own) =>
        from token in given.Tokens
        let read = inOtherWords(token.Value, own(), given)
        where read is not null
        select (token.Value, read);
}
