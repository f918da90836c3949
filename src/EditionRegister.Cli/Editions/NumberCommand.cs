using System.CommandLine;
using EditionRegister.UseCases;

namespace EditionRegister.Cli;

/// <summary><c>edreg number</c>: gives numbers to kept sheets, as piled or by hand, and takes them back.</summary>
internal static class NumberCommand
{
    private static readonly Column[] Columns = [new("code"), new("number")];

    public static Command Create(CommandContext context)
    {
        var edition = Arg.PerhapsId("EDITION", "The number of the edition. Needed to give numbers.");
        ChooserOptions chooser = new();
        var numbering = Opt.Numbering("--numbering", "Which numbering, as in A/P I-II. Else the numbered edition itself.");
        var byHand = Opt.Ranges("--as", "NUMBERS", "By hand: the numbers the chosen sheets get, in the same order.");
        var takeBack = Opt.Flag("--take-back", "Take the numbers of the chosen sheets back, while they are unsigned and here.");
        CommandWithExample command = new("number", "Gives numbers to kept sheets: as they lie in the pile, or by hand.", "edreg number 3 --as \"4, 7\" --sheets \"7KQ4-M2X3, H4RB-22R4\"") { edition };
        chooser.AddTo(command);
        command.Add(numbering);
        command.Add(byHand);
        command.Add(takeBack);

        command.SetAction(line => context.Record(line, register => line.GetValue(takeBack)
            ? TakenBack(register.GiveNumbers.TakeBack(NoNumbers(line, numbering, byHand, chooser).Read(line, line.GetValue(edition))))
            : NumbersGiven(register, Needed(line.GetValue(edition)), line.GetValue(numbering), line.GetValue(byHand), chooser, line)));

        return command;
    }

    private static Recorded NumbersGiven(Register register, long edition, string? numbering, string? byHand, ChooserOptions chooser, ParseResult line)
    {
        if (numbering is not null && byHand is not null)
        {
            throw new WrongUsageException("--numbering gives numbers as piled and --as gives them by hand: say one of them.");
        }

        var given = byHand is not null ? register.GiveNumbers.ByHand(edition, chooser.Read(line, edition), byHand)
            : register.GiveNumbers.AsPiled(edition, numbering, chooser.IsAsked(line) ? chooser.Read(line, edition) : null);
        var (work, found) = register.LookAround.Edition(edition);

        return new Recorded(EditionSaid.NumbersGiven(work, found, given.Count), json => json.Each("given", given, one =>
        {
            json.WriteString("code", one.Sheet.ShownCode);
            json.WriteString("number", one.Spelled);
        }))
        {
            More = printer => printer.Table(Columns, given.Select(one => (string[])[one.Sheet.ShownCode, one.Spelled])),
        };
    }

    private static Recorded TakenBack(int sheets) =>
        new(EditionSaid.NumbersTakenBack(sheets), json => json.WriteNumber("sheets", sheets));

    private static long Needed(long? edition) =>
        edition ?? throw new WrongUsageException("To give numbers say of which edition: edreg number 3.");

    private static ChooserOptions NoNumbers(ParseResult line, Option<string?> numbering, Option<string?> byHand, ChooserOptions chooser) =>
        (line.GetValue(numbering) ?? line.GetValue(byHand)) is null ? chooser : throw new WrongUsageException("--take-back takes numbers back and gives none, so it goes without --numbering and --as.");
}
