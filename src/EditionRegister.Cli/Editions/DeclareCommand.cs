using System.CommandLine;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;

namespace EditionRegister.Cli;

/// <summary><c>edreg declare</c>: declares an edition with its numberings.</summary>
internal static class DeclareCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work.");
        var numberings = Opt.Numberings("--numbering", $"How it is numbered: {NumberingPlans.Form}; a name before it, as in “deluxe: I-X”, tells two of one kind apart.");
        numberings.Required = true;
        var kind = Opt.Word("--kind", ["limited", "open", "varied", "unique", "unknown"], "What kind of edition. Else limited.");
        var extent = Opt.Word("--extent", ["whole", "partly-known", "someone-elses"], "Ours and wholly here, ours and partly known here, or someone else's. Else whole.");
        var intended = Opt.Some("--intended", "How many were intended, where that is another number.");
        var declared = Opt.Date("--declared", "When it was declared. Else not known.");
        var printing = Opt.Word("--printing", NewEdition.Printings, "On demand, where numbers are printed as they are wanted. Else nothing is said.");
        var rank = Opt.Word("--rank", NewEdition.Ranks, "Which edition of the work: a later one, a restrike or a posthumous one is disclosed as such.");
        var second = Opt.Flag("--second", "The same as --rank later.");
        var statement = Opt.Statement("The edition in somebody's words, kept as written. Else those of --numbering, where it has words.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("declare", "Declares an edition of a work, with its numberings.", "edreg declare 3 --numbering 1-12 --numbering \"A/P I-II\" --declared 2026-02-20")
        {
            work, numberings, kind, extent, intended, declared, printing, rank, second, statement, note,
        };

        command.SetAction(line => context.Record(line, register =>
        {
            var own = register.LookAround.OwnWords();
            var said = line.GetRequiredValue(numberings)!.Select(text => NumberingPlans.Read(text, own)).ToList();
            var id = register.DeclareEdition.Run(line.GetValue(work)!.Value, new NewEdition
            {
                Kind = line.GetValue(kind) ?? "limited",
                Extent = line.GetValue(extent) ?? "whole",
                Intended = line.GetValue(intended),
                Declared = line.GetValue(declared) ?? RecordedDate.None,
                Numberings = [.. said.SelectMany(one => one.Plans)],
                Statement = line.GetValue(statement) ?? NumberingPlans.StatementOf(said),
                Printing = line.GetValue(printing),
                Rank = line.GetValue(rank),
                IsSecond = line.GetValue(second),
                Note = line.GetValue(note),
            });

            return EditionRecorded.As("declared", register, id);
        }));

        return command;
    }
}
