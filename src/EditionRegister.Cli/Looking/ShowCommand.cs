using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg show</c>: shows one impression whole.</summary>
internal static class ShowCommand
{
    public static Command Create(CommandContext context)
    {
        var code = Arg.Code("The register code of the impression, or of a block, plate, stone or screen.");
        var asOf = AsOfOption.Create();
        CommandWithExample command = new("show", "Shows one impression whole: what it is, what stands on it, where it was and is, whose it was and is; or the block or plate that has the code. Exhibitions and sales are `edreg shows`.", "edreg show 7KQ4-M2X3") { code, asOf };

        command.SetAction(line => line.GetValue(asOf) is { } day ? Back(context, line, day, line.GetRequiredValue(code)) : context.Look(line, (register, printer) =>
        {
            if (register.LookAround.MatrixOfCode(line.GetRequiredValue(code)) is { } found)
            {
                printer.Show(
                    text: () => MatrixPage.Print(printer, found.Work, found.Matrix),
                    json: json =>
                    {
                        json.WriteNumber("work", found.Work.Id);
                        MatrixJson.Write(json, found.Work, found.Matrix);
                    });

                return;
            }

            var seen = register.LookAround.Impression(line.GetRequiredValue(code));
            printer.Show(
                text: () => ImpressionPage.Print(printer, seen, register.Settings.Sizes),
                json: json => ImpressionJson.Write(json, seen));
        }));

        return command;
    }

    private static int Back(CommandContext context, ParseResult line, DateOnly day, string code) => ThenPrinted.Look(
        context, line, day, (then, printer) => ThenPages.Impression(printer, then, code, context.Open(line).Settings.Sizes));
}
