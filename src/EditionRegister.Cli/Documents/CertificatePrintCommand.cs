using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg certificate print</c>: draws standing certificates again, word for word.</summary>
internal static class CertificatePrintCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var to = Opt.Text("--out", "DIR", "The folder to write into. Else the register's exports folder.");
        CommandWithExample command = new("print", "Writes certificates that stand as PDF again, word for word as they were issued.", "edreg certificate print --edition 1 --sheets 3");
        chooser.AddTo(command);
        command.Add(to);

        command.SetAction(line => context.Record(line, register =>
        {
            var files = register.WriteCertificates.Run(chooser.Read(line), context.PathOf(line.GetValue(to)));

            return new Recorded(PapersSaid.CertificatesWritten(files.Count), json => json.Texts("files", files))
            {
                More = printer => Written.Print(context, printer, files),
            };
        }));

        return command;
    }
}
