using System.CommandLine;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Cli;

/// <summary><c>edreg set gather</c>: puts sheets into the copies of a set.</summary>
internal static class SetGatherCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work that is the set.");
        var copies = Opt.Ranges("--copies", "COPIES", "Which copies, by number or code: 1-20, A/P I. Else every numbered one.");
        var part = Opt.Id("--part", "a work", "Only the sheets of this part.");
        ChooserOptions chooser = new();
        var date = Opt.Date("--date", "When. Else today.");
        CommandWithExample command = new("gather", "Puts sheets into the copies of a set: copy 3/20 gets number 3 of each part. With sheets chosen, these very sheets go into the one copy named.", "edreg set gather 9 --copies 1-20") { work, copies, part, date };
        chooser.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(work)!.Value;
            var into = Copies(register, id, line.GetValue(copies));
            var sheets = chooser.IsAsked(line)
                ? register.GatherSet.ByHand(id, into ?? throw new WrongUsageException("With sheets chosen, say into which copy they go: --copies 3."), NoPart(line, part, chooser).Read(line), line.GetValue(date))
                : register.GatherSet.ByNumber(id, into, line.GetValue(part) is { } one ? [one] : [], line.GetValue(date));
            var seen = register.LookAround.Set(id);

            return new Recorded(SetsSaid.Gathered(seen.Work, sheets), json =>
            {
                json.WriteNumber("sheets", sheets);
                SetJson.WriteHead(json, seen);
            });
        }));

        return command;
    }

    /// <summary>Copies are called by the numbers of the set's first edition, or by codes.</summary>
    private static ImpressionChoice? Copies(Register register, long set, string? copies) =>
        copies is null ? null : new ImpressionChoice { Sheets = copies, Edition = register.LookAround.Set(set).Work.Editions is [var first, ..] ? first.Id : null };

    private static ChooserOptions NoPart(ParseResult line, Option<long?> part, ChooserOptions chooser) =>
        line.GetValue(part) is null ? chooser : throw new WrongUsageException("--part gathers by number; with sheets chosen it is known which part they are of.");
}
