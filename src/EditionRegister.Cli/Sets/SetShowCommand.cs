using System.CommandLine;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Sets;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Cli;

/// <summary><c>edreg set show</c>: one set with its parts, and what lies in each copy.</summary>
internal static class SetShowCommand
{
    private static readonly Column[] PartColumns = [new("part", IsRight: true), new("work", IsRight: true), new("title")];

    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work that is the set.");
        CommandWithExample command = new("show", "Shows one set: its parts, and copy by copy which sheet of each part lies in it.", "edreg set show 9") { work };

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var seen = register.LookAround.Set(line.GetValue(work)!.Value);
            printer.Show(
                text: () => Print(printer, seen),
                json: json =>
                {
                    SetJson.WriteHead(json, seen);
                    SetJson.WriteCopies(json, seen);
                });
        }));

        return command;
    }

    private static void Print(Printer printer, SetSeen seen)
    {
        printer.Line($"Set {Counted.Figure(seen.Work.Id)}: {Called.Work(seen.Work)}, {SetsSaid.InShort(seen)}");
        printer.Line();
        printer.Facts(("Maker", seen.Work.ShownMaker), ("Form", SetForm.NameOf(seen.Set.Form)), ("Signed on", seen.Set.SignedOn), ("Note", seen.Set.Note));
        printer.Section("Parts:", PartColumns, [.. seen.Set.Parts.Select(part => (string[])[Counted.Figure(part.Ordinal), Counted.Figure(part.Work), part.Title])]);
        printer.Section(
            "Copies:",
            [new("copy"), new("code"), .. seen.Set.Parts.Select(part => new Column($"part {Counted.Figure(part.Ordinal)}")), new("where"), new("whose")],
            [
                .. seen.Copies.Select(copy => (string[])
                [
                    seen.Work.NumberOf(copy), copy.ShownCode, .. seen.Set.Parts.Select(part => SetSeen.In(copy, part)?.Number ?? "–"),
                    WhereInWords.Of(seen.Work, copy), WhereInWords.OwnerOf(seen.Work, copy),
                ]),
            ]);
    }
}
