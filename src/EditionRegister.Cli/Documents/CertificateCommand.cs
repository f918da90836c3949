using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg certificate</c>: everything about certificates of authenticity.</summary>
internal static class CertificateCommand
{
    public static Command Create(CommandContext context) => new CommandWithExample("certificate", "Issues certificates of authenticity, and prints those that stand.", "edreg certificate issue --sheets 7KQ4-M2X3")
    {
        CertificateIssueCommand.Create(context),
        CertificatePrintCommand.Create(context),
    };
}
