using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg certificate issue</c>: issues certificates and writes them as PDF.</summary>
internal static class CertificateIssueCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var supersede = Opt.Flag("--supersede", "Take the place of certificates that stand already.");
        var to = Opt.Text("--out", "DIR", "The folder to write into. Else the register's exports folder.");
        CommandWithExample command = new("issue", "Issues a certificate for each impression, freezes what it states, and writes it as a PDF.", "edreg certificate issue --edition 1 --sheets \"3, A/P I\"");
        chooser.AddTo(command);
        command.Add(supersede);
        command.Add(to);

        command.SetAction(line => context.Record(line, register =>
        {
            var choice = chooser.Read(line);
            var serials = register.IssueCertificates.Run(choice, line.GetValue(supersede));
            var files = register.WriteCertificates.Run(choice, context.PathOf(line.GetValue(to)));

            return new Recorded(PapersSaid.Issued(serials), json =>
            {
                json.Texts("serials", serials);
                json.Texts("files", files);
            })
            {
                More = printer => Written.Print(context, printer, files, PapersSaid.MindCertificates),
            };
        }));

        return command;
    }
}
