using EditionRegister.Domain;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Documents;

/// <summary>Certificates that stand, drawn again word for word; none is issued.</summary>
internal sealed class CertificateAgainPaper() : Paper("r", "certificates: print again those that stand")
{
    public override async Task<PreviewLeaves> PreviewAsync(Desk desk, PaperOrder order)
    {
        var certificates = await desk.Store.Do(register => register.PreviewStandingCertificates.Run(order.Choice));
        var none = certificates.Count(certificate => certificate.Statement is null);

        return new PreviewLeaves(
            none == 0 ? "As they were issued, word for word. Printing again issues nothing." : $"For {Counted.Figure(none)} of {Counted.Sheets(certificates.Count)} there is none to print, and then none is written.{CertificateText.LeaveOut(none, certificates.Count)}",
            CertificateText.Leaves(certificates));
    }

    public override async Task<Written> WriteAsync(Desk desk, PaperOrder order)
    {
        // One that is missing is met before the first file is written.
        if ((await desk.Store.Do(register => register.PreviewStandingCertificates.Run(order.Choice))).FirstOrDefault(certificate => certificate.Refusal is not null) is { } missing)
        {
            throw new RefusedException("certificate-none-stands", missing.Refusal!);
        }

        var files = await CertificateFiles.WriteAsync(desk, order);

        return new Written(PapersSaid.CertificatesWritten(files.Count), files);
    }
}
