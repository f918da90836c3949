using System.CommandLine;
using System.Text.Json;
using EditionRegister.Domain.Impressions;
using EditionRegister.UseCases.Impressions;

namespace EditionRegister.Cli;

/// <summary><c>edreg propose</c>: proposes which sheets of a pile to keep, by their grades.</summary>
internal static class ProposeCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Opt.Id("--work", "a work", "The work.");
        work.Required = true;
        var run = Opt.Some("--run", "The print run. Else 1.");
        var keep = Opt.Some("--keep", "How many sheets are wanted.");
        keep.Required = true;
        var go = Opt.Flag("--go", "Sort the proposed sheets as kept. Else nothing is changed.");
        CommandWithExample command = new("propose", "Proposes the sheets of a pile that are cleanest and most alike, worked out from their grades. The person decides: without --go nothing is changed.", "edreg propose --work 3 --run 1 --keep 12") { work, run, keep, go };

        command.SetAction(line =>
        {
            var (id, ordinal, count) = (line.GetValue(work)!.Value, line.GetValue(run) ?? 1, line.GetValue(keep)!.Value);

            return line.GetValue(go)
                ? context.Record(line, register =>
                {
                    var taken = register.ProposeKept.Take(id, ordinal, count);

                    return new Recorded(SortingSaid.Taken(taken), json => Write(json, taken));
                })
                : context.Look(line, (register, printer) => Print(printer, register.ProposeKept.Run(id, ordinal, count)));
        });

        return command;
    }

    private static void Print(Printer printer, KeptProposed proposed) => printer.Show(
        text: () =>
        {
            printer.Line(SortingSaid.Proposed(proposed));

            foreach (var table in new[] { ProposalTable.Of("Proposed:", proposed.Proposal.Sheets), ProposalTable.Of("Not proposed:", proposed.Proposal.Others) })
            {
                printer.Section(table.Heading, [.. table.Columns.Select(column => new Column(column.Head, column.IsRight))], table.Rows);
            }

            printer.Line();

            foreach (var sentence in SortingSaid.HowProposed(proposed.Proposal))
            {
                printer.Line(sentence);
            }

            printer.Line("You decide: with --go the proposed sheets are sorted as kept, and each can be sorted otherwise with `edreg sort`.");
        },
        json: json => Write(json, proposed));

    private static void Write(Utf8JsonWriter json, KeptProposed proposed)
    {
        json.WriteNumber("work", proposed.Work.Id);
        json.WriteNumber("run", proposed.Run.Ordinal);
        json.WriteNumber("cost", proposed.Proposal.Costs);
        json.WriteString("middle", proposed.Proposal.Middle?.ShownCode);
        json.Each("proposed", proposed.Proposal.Sheets, one => Write(json, one));
        json.Each("not_proposed", proposed.Proposal.Others, one => Write(json, one));
    }

    private static void Write(Utf8JsonWriter json, ProposedSheet one)
    {
        json.WriteNumber("sheet", one.Sheet.Ordinal);
        json.WriteString("code", one.Sheet.ShownCode);
        GradeJson.WriteMarks(json, aspect => aspect.MarkOf(one.Sheet.Grade));
        json.WriteNumber("lacks", one.Lacks);
        json.WriteNumber("differs", one.Differs);
        json.WriteNumber("not_looked_at", one.NotLooked);
    }
}
