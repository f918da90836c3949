using System.CommandLine;
using EditionRegister.Domain.Impressions;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Cli;

/// <summary><c>edreg list</c>: lists impressions.</summary>
internal static class ListCommand
{
    public static Command Create(CommandContext context)
    {
        var texts = Arg.Texts("TEXT", "A code, or words to find in title, maker, place, year, technique and a part of the code; case and accents make no difference. A number (A/P 2, 3/12, B.A.T.), a date (c. 2019, 1960s, spring 2024, before 1950) and a technique (etching, Radierung) are also found however they are recorded.");
        var maker = Opt.Text("--maker", "WHO", "Only of this maker: a name or number of the address book.");
        var place = Opt.Text("--place", "PLACE", "Only what lies in this place, or in a place in it.");
        var standing = Opt.Word("--standing", SortingDeeds.Standings, "Only sheets of this standing.");
        var work = Opt.Id("--work", "a work", "Only of this work.");
        var edition = Opt.Id("--edition", "an edition", "Only what bears a number of this edition.");
        var skip = Opt.Count("--skip", "Leave out so many from the beginning.");
        var take = Opt.Count("--take", "Show so many at most. Else all.");
        var asOf = AsOfOption.Create();
        CommandWithExample command = new("list", "Lists impressions: code, number, title, maker, standing, where and whose.", "edreg list harbour --standing kept --take 20")
        {
            texts, maker, place, standing, work, edition, skip, take, asOf,
        };

        command.SetAction(line =>
        {
            var wanted = Wanted(line);

            return line.GetValue(asOf) is { } day
                ? ThenPrinted.Look(context, line, day, (then, printer) => ThenPages.List(printer, then, wanted))
                : context.Look(line, (register, printer) => ImpressionLists.Print(printer, register.ListImpressions.Run(wanted), wanted.Skip));
        });

        return command;

        ImpressionsWanted Wanted(ParseResult line) => new()
        {
            Texts = line.GetValue(texts) ?? [],
            Maker = line.GetValue(maker),
            Place = line.GetValue(place),
            Standing = line.GetValue(standing),
            Work = line.GetValue(work),
            Edition = line.GetValue(edition),
            Skip = line.GetValue(skip) ?? 0,
            Take = line.GetValue(take),
        };
    }
}
