using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg pencil</c>: spells what belongs on the sheets themselves.</summary>
internal static class PencilCommand
{
    private static readonly Column[] Columns = [new("code"), new("left"), new("middle"), new("right")];

    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        CommandWithExample command = new("pencil", "Spells what is to be pencilled under the image: number at left, title in the middle, signature at right.", "edreg pencil --edition 1 --sheets 1-12");
        chooser.AddTo(command);

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var spelled = register.SpellPencil.Run(chooser.Read(line));
            printer.Show(
                text: () => printer.Table(Columns, spelled.Select(sheet => (string[])[sheet.Code, sheet.Text.Number, sheet.Text.Title, sheet.Text.Signature])),
                json: json => json.Each("sheets", spelled, sheet =>
                {
                    json.WriteString("code", sheet.Code);
                    json.WriteString("left", sheet.Text.Number);
                    json.WriteString("middle", sheet.Text.Title);
                    json.WriteString("right", sheet.Text.Signature);
                }));
        }));

        return command;
    }
}
