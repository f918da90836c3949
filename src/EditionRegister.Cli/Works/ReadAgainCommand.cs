using System.CommandLine;
using EditionRegister.UseCases.Works;

namespace EditionRegister.Cli;

/// <summary><c>edreg read-again</c>: reads words that were written before the program could read them.</summary>
internal static class ReadAgainCommand
{
    private const int MostTexts = 20;

    private static readonly Column[] Columns = [new("as written"), new("read as")];

    public static Command Create(CommandContext context)
    {
        var go = Opt.Flag("--go", "Keep what was read beside the words. Without it nothing is changed.");
        CommandWithExample command = new("read-again", "Reads dates, papers and techniques that were written in words before the program could read them; shows first what that comes to. The words stay.", "edreg read-again --go") { go };

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var read = line.GetValue(go) ? register.ReadTextsAgain.Run() : register.ReadTextsAgain.Preview();

            printer.Show(
                text: () => Print(printer, read, line.GetValue(go)),
                json: json =>
                {
                    json.WriteNumber("works", read.Works);
                    json.WriteNumber("texts", read.Texts.Count);
                    json.Each("texts_read", read.Texts.Distinct(), one =>
                    {
                        json.WriteString("text", one.Text);
                        json.WriteString("read_as", one.As);
                    });
                    json.Whole("batch", read.Batch);
                });
        }));

        return command;
    }

    private static void Print(Printer printer, TextsReadAgain read, bool isDone)
    {
        if (read.Texts.Count == 0)
        {
            printer.Line("There is nothing to read: every text that can be read has been.");

            return;
        }

        var different = read.Texts.Distinct().ToList();
        printer.Table(Columns, different.Take(MostTexts).Select(one => (string[])[one.Text, one.As]));

        if (different.Count > MostTexts)
        {
            printer.Line($"… and {Counted.Figure(different.Count - MostTexts)} different texts more.");
        }

        printer.Line();
        printer.Line($"{Counted.Of(read.Texts.Count, "text")} of {Counted.Of(read.Works, "work")} {(isDone ? $"read, as batch {Counted.Figure(read.Batch ?? 0)}; `edreg undo {Counted.Figure(read.Batch ?? 0)}` takes that back." : "can be read. Nothing was changed yet; run this again with --go.")}");
    }
}
