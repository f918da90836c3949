using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg certificate</c>: everything about certificates of authenticity.</summary>
internal static class CertificateCommand
{
    public static Command Create(CommandContext context) => new CommandWithExample("certificate", "Issues certificates of authenticity, and prints those that stand.", "edreg certificate issue --sheets ZZZZ-ZZZV")
    {
        CertificateIssueCommand.Create(context),
        CertificatePrintCommand.Create(context),
    };
}
