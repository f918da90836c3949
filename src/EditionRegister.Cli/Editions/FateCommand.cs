using System.CommandLine;
using EditionRegister.Domain.Editions;

namespace EditionRegister.Cli;

/// <summary><c>edreg fate</c>: states what became of numbers that no sheet has.</summary>
internal static class FateCommand
{
    public static Command Create(CommandContext context)
    {
        var edition = Arg.Id("EDITION", "The number of the edition.");
        var numbers = Arg.Ranges("NUMBERS", "Which numbers: 11, 12 or A/P II.");
        var fate = Arg.Word("FATE", NumberingDeeds.Fates, "What became of them.");
        var note = Opt.Text("--note", "TEXT", "The story; a void number needs one.");
        CommandWithExample command = new("fate", "States what became of numbers that no sheet has.", "edreg fate 3 11-12 never-printed") { edition, numbers, fate, note };

        command.SetAction(line => context.Record(line, register =>
        {
            var (id, word) = (line.GetValue(edition)!.Value, line.GetRequiredValue(fate));
            var count = register.StateNumberFate.Run(id, line.GetRequiredValue(numbers), word, line.GetValue(note));
            var (work, found) = register.LookAround.Edition(id);

            return new Recorded(EditionSaid.Fate(work, found, count, word), json =>
            {
                json.WriteNumber("edition", id);
                json.WriteNumber("numbers", count);
                json.WriteString("fate", word);
            });
        }));

        return command;
    }
}
