using System.CommandLine;
using System.CommandLine.Parsing;
using EditionRegister.Domain.Text;

namespace EditionRegister.Cli;

/// <summary>Says after a deed how the words of its options were read, so that a person sees what stands beside them in the register.</summary>
internal static class Readings
{
    public static void Print(ParseResult line, CommandContext context)
    {
        // Machines are given the typed values themselves.
        if (context.IsJson)
        {
            return;
        }

        foreach (var given in line.CommandResult.Children.OfType<OptionResult>())
        {
            if (given is { Implicit: false, Option: IReadOption option } && option.ReadAs(given, context.OwnWords) is { } read)
            {
                context.Output.WriteLine(SafeText.Show($"{given.Option.Name} “{string.Join(' ', given.Tokens.Select(token => token.Value))}” was read as {read}."));
            }
        }
    }
}
