using EditionRegister.Domain;
using EditionRegister.Domain.Editions;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Tests.Editions;

public sealed class MakeEditionWholeTests : IDisposable
{
    private readonly TempRegister _temp = new();

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void An_old_edition_read_in_is_accounted_for_declared_whole_certified_and_checked_clean()
    {
        var register = _temp.Register;
        register.ReadIn.Run(_temp.File("old.csv", "title,maker,number,signed\nEbb,Mira Tolland,1/4,yes\nEbb,Mira Tolland,3/4,yes\nEbb,Mira Tolland,A/P,yes\n"), []);

        var proof = register.LookAround.Work(1).Impressions.Single(sheet => sheet.Pencilled == "A/P").ShownCode;

        var refused = Assert.Throws<RefusedException>(() => register.MakeEditionWhole.Run(1));
        register.StateNumberFate.Run(1, "2, 4", "elsewhere", "sold at the fair, buyers not known");
        Assert.Throws<RefusedException>(() => register.MakeEditionWhole.Run(1));
        register.MendSize.Run(1, NumberingPlan.Read("A/P"));
        register.GiveNumbers.ByHand(1, ImpressionChoice.OfCode(proof), "A/P");
        register.MakeEditionWhole.Run(1);
        register.IssueCertificates.Run(new() { Edition = 1, Sheets = "1" });

        Assert.Equal("edition-not-all-known", refused.Name);
        Assert.Contains("2/4, 4/4", refused.Message, StringComparison.Ordinal);
        Assert.True(register.LookAround.Edition(1).Edition.IsWhole);
        Assert.DoesNotContain(register.CheckRegister.Run(), finding => finding.Severity == Domain.Integrity.Severity.Contradiction);
    }
}
