using EditionRegister.Domain;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Documents;

/// <summary>Certificates that are issued, and written as PDF.</summary>
internal sealed class CertificatePaper(string key, string name, bool supersede) : Paper(key, name)
{
    public override string? Asked(PaperOrder order) =>
        $"Issue {Counted.Of(order.Codes.Count, "certificate")}{(supersede ? " in place of what stands" : "")}? Each freezes what the register says today; it can be superseded later, and never taken back. {PapersSaid.MindCertificates}";

    public override async Task<PreviewLeaves> PreviewAsync(Desk desk, PaperOrder order)
    {
        var certificates = await desk.Store.Do(register => register.PreviewCertificates.Run(order.Choice, supersede));
        var refused = certificates.Count(certificate => certificate.Statement is null);

        return new PreviewLeaves(
            refused == 0 ? "As they will be issued: nothing is issued yet." : $"{Counted.Figure(refused)} of {Counted.Of(certificates.Count, "certificate")} cannot be issued, and then none is.{CertificateText.LeaveOut(refused, certificates.Count)}",
            CertificateText.Leaves(certificates));
    }

    public override async Task<Written> WriteAsync(Desk desk, PaperOrder order)
    {
        desk.Progress($"Issuing {Counted.Of(order.Codes.Count, "certificate")}…");
        var issued = PapersSaid.Issued(await desk.Store.Do(register => register.IssueCertificates.Run(order.Choice, supersede)));

        try
        {
            return new Written(issued, await CertificateFiles.WriteAsync(desk, order), PapersSaid.MindCertificates);
        }
        catch (RefusedException refusal)
        {
            // They stand, whatever became of the files; asked for again they would be refused.
            throw new RefusedException(refusal.Name, $"{issued} {refusal.Message} What is issued can be printed again then: “{All[1].Name}”.");
        }
    }
}
