using System.CommandLine;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Cli;

/// <summary>A command that says something of sheets in words of one's own, or takes back what was said.</summary>
internal static class WordsOfSheetsCommand
{
    /// <param name="context">Where it runs.</param>
    /// <param name="command">Its name, what it does, and an example.</param>
    /// <param name="words">The option that takes the words.</param>
    /// <param name="fact">What machines call what is said.</param>
    /// <param name="run">Records it, null taking it back; answers how many sheets.</param>
    /// <param name="say">The sentence for so many sheets.</param>
    public static Command Create(
        CommandContext context, CommandWithExample command, Option<string?> words, string fact,
        Func<Register, ImpressionChoice, string?, int> run, Func<int, string?, string> say)
    {
        ChooserOptions chooser = new();
        var clear = Opt.Flag("--take-back", "Take back what was said of them.");
        chooser.AddTo(command);
        command.Add(words);
        command.Add(clear);

        command.SetAction(line => context.Record(line, register =>
        {
            var said = line.GetValue(words);

            if (line.GetValue(clear) == said is not null)
            {
                throw new WrongUsageException($"Say it with {words.Name}, or take it back with --take-back: one of them.");
            }

            var sheets = run(register, chooser.Read(line), said);

            return new Recorded(say(sheets, said), json =>
            {
                json.WriteNumber("sheets", sheets);
                json.WriteString(fact, said);
            });
        }));

        return command;
    }
}
