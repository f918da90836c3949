using System.CommandLine;
using System.CommandLine.Parsing;
using EditionRegister.Domain.Reading.Inscriptions;
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

        foreach (var given in line.CommandResult.Children.OfType<OptionResult>().Where(given => !given.Implicit))
        {
            foreach (var (text, read) in given.Option is IReadOption option ? option.Readings(given, context.OwnWords) : [])
            {
                context.Output.WriteLine(SafeText.Show($"{given.Option.Name} “{text}” was {(IsNotRead(read) ? read : $"read as {read}")}."));
            }
        }
    }

    private static bool IsNotRead(string read) => read.StartsWith(StatementInWords.NotRead, StringComparison.Ordinal);
}
