using System.CommandLine;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary><c>edreg work list</c>: lists works with their numbers and those of their editions.</summary>
internal static class WorkListCommand
{
    private static readonly Column[] Columns = [new("work", IsRight: true), new("title"), new("maker"), new("year"), new("technique"), new("editions"), new("sheets", IsRight: true)];

    public static Command Create(CommandContext context)
    {
        CommandWithExample command = new("list", "Lists all works with their numbers, and the numbers of their editions.", "edreg work list");

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var works = register.LookAround.Works();
            printer.Show(
                text: () =>
                {
                    printer.Table(Columns, works.Select(Row));
                    printer.Line($"{Counted.Of(works.Count, "work")}.");
                },
                json: json => json.Each("works", works, work =>
                {
                    WorkJson.WriteHead(json, work);
                    json.Each("editions", work.Editions, edition => EditionJson.Write(json, edition));
                    json.WriteNumber("sheets", work.Impressions.Count);
                }));
        }));

        return command;
    }

    private static string[] Row(Work work) =>
    [
        Counted.Figure(work.Id),
        work.ShownTitle,
        work.ShownMaker,
        work.Year.Text ?? "",
        work.Technique ?? "",
        string.Join("; ", work.Editions.Select(edition => $"{Counted.Figure(edition.Id)}: {string.Join(", ", edition.Numberings.Select(numbering => numbering.Span))}")),
        Counted.Figure(work.Impressions.Count),
    ];
}
