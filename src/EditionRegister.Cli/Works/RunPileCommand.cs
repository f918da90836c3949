using System.CommandLine;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary><c>edreg run pile</c>: lays the pile of a print run that was under way.</summary>
internal static class RunPileCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work.");
        var run = Opt.Some("--run", "The print run. Else 1.");
        var unused = Opt.Count("--unused", "Sheets left unused.");
        var spoiled = Opt.Count("--spoiled", "Sheets spoiled. Else as its passes counted.");
        var ready = Opt.Date("--ready", "From when the sheets are dry enough to be sorted.");
        var place = Opt.Text("--place", "PLACE", "Where the pile lies. Else it is with the maker.");
        CommandWithExample command = new("pile", "Lays the pile of a print run that was under way, after its last pass: every sheet that came through gets its code.", "edreg run pile 3 --ready 2026-03-04") { work, run, unused, spoiled, ready, place };

        command.SetAction(line => context.Record(line, register =>
        {
            var (id, ordinal) = (line.GetValue(work)!.Value, line.GetValue(run) ?? 1);
            NewPile pile = new() { Unused = line.GetValue(unused), Spoiled = line.GetValue(spoiled), Ready = line.GetValue(ready) };
            var ids = register.LayPile.Run(id, ordinal, pile, line.GetValue(place)).ToHashSet();
            var printed = register.LookAround.Work(id);
            var laid = printed.Runs.First(one => one.Ordinal == ordinal);

            return RunAddCommand.Recorded(BenchSaid.PileLaid(printed, laid), printed, laid, [.. printed.Impressions.Where(sheet => ids.Contains(sheet.Id))]);
        }));

        return command;
    }
}
