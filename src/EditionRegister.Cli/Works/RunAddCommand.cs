using System.CommandLine;
using System.Text.Json;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary><c>edreg run add</c>: records a print run and gives every sheet of its pile a code.</summary>
internal static class RunAddCommand
{
    private static readonly Column[] Columns = [new("code"), new("sheet", IsRight: true), new("standing")];

    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work.");
        RunOptions options = new();
        CommandWithExample command = new("add", "Records a print run, with what was counted, and gives every sheet of the pile its code.", "edreg run add 3 --started 24 --unused 2 --spoiled 3 --held-out 4 --paper \"Hosho 60 g\" --printed 2026-02 --image 300x225 --sheet 400x300") { work };
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(work)!.Value;
            var ids = register.RecordPrintRun.Run(id, options.Read(line), options.Place(line)).ToHashSet();
            var printed = register.LookAround.Work(id);

            return Recorded(printed, [.. printed.Impressions.Where(sheet => ids.Contains(sheet.Id))]);
        }));

        return command;
    }

    private static Recorded Recorded(Work work, IReadOnlyList<Impression> pile)
    {
        // A pile of nothing leaves no sheet that would say which run it was: the newest.
        var run = pile is [var first, ..] ? work.RunOf(first)! : work.Runs[^1];

        return Recorded(run.IsUnderWay(pile.Count) ? BenchSaid.UnderWay(work, run) : BenchSaid.Recorded(work, run), work, run, pile);
    }

    /// <summary>What was recorded of a run, with every sheet of its pile.</summary>
    internal static Recorded Recorded(string sentence, Work work, PrintRun run, IReadOnlyList<Impression> pile) =>
        new(sentence, json => Write(json, work, run, pile))
        {
            More = pile.Count == 0 ? null : printer => printer.Table(Columns, pile.Select(sheet => (string[])[sheet.ShownCode, Counted.Figure(sheet.Ordinal), Called.Plain(sheet.Standing)])),
        };

    private static void Write(Utf8JsonWriter json, Work work, PrintRun run, IReadOnlyList<Impression> pile)
    {
        json.WriteNumber("work", work.Id);
        RunJson.Write(json, work, run);
        json.Each("sheets", pile, sheet =>
        {
            json.WriteString("code", sheet.ShownCode);
            json.WriteNumber("place_in_pile", sheet.Ordinal);
            json.WriteString("standing", sheet.Standing);
        });
    }
}
