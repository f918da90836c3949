using System.CommandLine.Parsing;
using EditionRegister.Domain;

namespace EditionRegister.Cli;

/// <summary>Reads one value as it is typed; false where it is none.</summary>
internal delegate bool TryRead<T>(string text, out T value);

/// <summary>Reads one value as it is typed, or says in a sentence why it is none.</summary>
internal delegate bool TryExplain<T>(string text, out T? value, out string? whyNot)
    where T : class;

/// <summary>Turns readers of the register's own types into parsers of the command line: a value that is none is wrong usage, told with its form.</summary>
internal static class Given
{
    /// <param name="tryRead">Reads a value.</param>
    /// <param name="form">The form of a right one.</param>
    /// <param name="whyNot">Why a text is none, in a sentence, where that can be said.</param>
    public static Func<ArgumentResult, T?> One<T>(TryRead<T> tryRead, string form, Func<string, string?>? whyNot = null) => given =>
        given.Tokens is [var token] ? Read(given, token.Value, tryRead, form, whyNot) : default;

    public static Func<ArgumentResult, T[]?> Many<T>(TryRead<T> tryRead, string form) => given =>
        [.. given.Tokens.Select(token => Read(given, token.Value, tryRead, form)).OfType<T>()];

    /// <summary>For types that say in a sentence why a text is none of theirs.</summary>
    public static Func<ArgumentResult, T?> Explained<T>(TryExplain<T> tryRead)
        where T : class => given =>
    {
        if (given.Tokens is not [var token])
        {
            return null;
        }

        if (tryRead(token.Value, out var value, out var whyNot))
        {
            return value;
        }

        given.AddError($"{NameOf(given)}: “{token.Value}” was not read. {whyNot}");

        return null;
    };

    /// <summary>For types that say themselves, as a refusal, what is wrong.</summary>
    public static Func<ArgumentResult, string?> Sound(Action<string> read) => given =>
        given.Tokens is [var token] && Accepts(given, token.Value, read) ? token.Value : null;

    public static Func<ArgumentResult, string[]?> AllSound(Action<string> read) => given =>
        [.. given.Tokens.Select(token => token.Value).Where(text => Accepts(given, text, read))];

    private static T? Read<T>(ArgumentResult given, string text, TryRead<T> tryRead, string form, Func<string, string?>? whyNot = null)
    {
        if (tryRead(text, out var value))
        {
            return value;
        }

        given.AddError($"{NameOf(given)} takes {form}, and “{text}” is none.{(whyNot?.Invoke(text) is { } why ? $" {why}" : "")}");

        return default;
    }

    private static bool Accepts(ArgumentResult given, string text, Action<string> read)
    {
        try
        {
            read(text);

            return true;
        }
        catch (RefusedException refusal)
        {
            given.AddError(refusal.Message);

            return false;
        }
    }

    private static string NameOf(ArgumentResult given) =>
        given.Parent is OptionResult option ? option.Option.Name : given.Argument.HelpName ?? given.Argument.Name;
}
