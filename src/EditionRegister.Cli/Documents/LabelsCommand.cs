using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg labels</c>: prints labels for folder, sleeve, mat or backing.</summary>
internal static class LabelsCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var sheet = Opt.Text("--label-sheet", "NAME", "The label sheet, by name. Else a4-3x8. A name that is not known lists those that are.");
        var from = Opt.Some("--from", "The first label that is still on the sheet, counted from one, row by row.");
        var file = Opt.Text("--out", "FILE", "The PDF to write. Else labels.pdf in the register's exports folder.");
        CommandWithExample command = new("labels", "Writes labels with the register code, and a QR link where the register has a base URL.", "edreg labels --edition 1 --sheets 1-12 --label-sheet a4-3x8 --from 4");
        chooser.AddTo(command);
        command.Add(sheet);
        command.Add(from);
        command.Add(file);

        command.SetAction(line => context.Record(line, register =>
        {
            var written = register.WriteLabels.Run(chooser.Read(line), line.GetValue(sheet) ?? "a4-3x8", line.GetValue(from) ?? 1, context.PathOf(line.GetValue(file)));

            return new Recorded(PapersSaid.LabelsWritten(written), json =>
            {
                json.WriteString("file", written.Path);
                json.WriteNumber("labels", written.Labels);
                json.WriteNumber("sheets", written.Sheets);
            })
            {
                More = printer => Written.Print(context, printer, [written.Path], PapersSaid.MindLabels),
            };
        }));

        return command;
    }
}
