using System.CommandLine;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;

namespace EditionRegister.Cli;

/// <summary>Arguments whose values are read by the register's own types.</summary>
internal static class Arg
{
    public static Argument<string> Text(string word, string description) =>
        new(word) { HelpName = word, Description = description, CustomParser = Given.One<string>(TextValue.TryRead, TextValue.Form) };

    public static Argument<string?> PerhapsText(string word, string description) => new(word)
    {
        HelpName = word,
        Description = description,
        Arity = ArgumentArity.ZeroOrOne,
        CustomParser = Given.One<string?>(TextValue.TryRead!, TextValue.Form),
    };

    public static Argument<string[]?> Texts(string word, string description) => new(word)
    {
        HelpName = word,
        Description = description,
        Arity = ArgumentArity.ZeroOrMore,
        CustomParser = Given.Many<string>(TextValue.TryRead, TextValue.Form),
    };

    /// <param name="word">How the help calls it, and what it numbers: "WORK".</param>
    /// <param name="description">One line.</param>
    public static Argument<long?> Id(string word, string description) => new(word)
    {
        HelpName = word,
        Description = description,
        // A type that knows nothing would make the argument one that can be left out.
        Arity = ArgumentArity.ExactlyOne,
        CustomParser = Given.One<long?>(NumberValue.TryReadId, "a number, such as 3"),
    };

    public static Argument<long?> PerhapsId(string word, string description)
    {
        var argument = Id(word, description);
        argument.Arity = ArgumentArity.ZeroOrOne;

        return argument;
    }

    public static Argument<string> Word(string word, IReadOnlyList<string> words, string description) => new(word)
    {
        HelpName = word,
        Description = $"{description} One of {WordValue.Form(words)}.",
        CustomParser = Given.One<string>(WordValue.In(words)!, WordValue.Form(words)),
    };

    public static Argument<string> Code(string description) => new("CODE")
    {
        HelpName = "CODE",
        Description = description,
        CustomParser = Given.Sound(ReadCode)!,
    };

    public static Argument<string> Ranges(string word, string description) => new(word)
    {
        HelpName = word,
        Description = description,
        CustomParser = Given.Sound(NumberRanges.Plausible)!,
    };

    public static Argument<string> Numbering(string description) => new("NUMBERING")
    {
        HelpName = "NUMBERING",
        Description = description,
        CustomParser = Given.Sound(NumberingPlan.Plausible)!,
    };

    private static void ReadCode(string text)
    {
        if (!RegisterCode.TryParse(text, out _))
        {
            throw ImpressionRefusals.NotACode(text);
        }
    }
}
