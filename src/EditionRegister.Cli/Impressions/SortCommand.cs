using System.CommandLine;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Cli;

/// <summary><c>edreg sort</c>: sorts dry pulls.</summary>
internal static class SortCommand
{
    public static Command Create(CommandContext context)
    {
        var standing = Arg.Word("STANDING", SortingDeeds.Standings, "What the sheets become.");
        ChooserOptions chooser = new();
        var fault = Opt.Text("--fault", "FAULT", "Why they are left out: misregistration, slur, smudge, crease, stain, other.");
        var note = Opt.Text("--note", "TEXT", "More about the fault.");
        CommandWithExample command = new("sort", "Sorts dry pulls: kept, spare, or left out for a fault.", "edreg sort kept --work 3 --pile \"1-14\"") { standing };
        chooser.AddTo(command);
        command.Add(fault);
        command.Add(note);

        command.SetAction(line => context.Record(line, register =>
        {
            var word = line.GetRequiredValue(standing);
            var wet = RackText.TooEarly(register.LookAround.Chosen(chooser.Read(line)), register.ListRack.Today);
            var sheets = register.SortPulls.Run(chooser.Read(line), word, line.GetValue(fault), line.GetValue(note));

            return new Recorded(wet is null ? EditionSaid.Sorted(sheets, word) : $"{EditionSaid.Sorted(sheets, word)} {wet}", json =>
            {
                json.WriteNumber("sheets", sheets);
                json.WriteString("standing", word);
            });
        }));

        return command;
    }
}
