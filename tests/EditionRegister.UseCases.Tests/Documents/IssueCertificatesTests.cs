using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.UseCases.Tests.Documents;

public sealed class IssueCertificatesTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public IssueCertificatesTests()
    {
        _register = SmallEdition.Make(_temp.Register);
        _register.InscribeImpressions.Run(SmallEdition.Numbers("1-4"), new WhatStandsOnIt { AsSpelled = true, Signature = "M. Tolland" });
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Freezes_what_it_states_and_a_second_one_must_take_its_place()
    {
        var first = _register.IssueCertificates.Run(SmallEdition.Numbers("2")).Single();

        var refused = Assert.Throws<RefusedException>(() => _register.IssueCertificates.Run(SmallEdition.Numbers("2")));
        var second = _register.IssueCertificates.Run(SmallEdition.Numbers("2"), supersede: true).Single();

        Assert.Equal("certificate-stands-already", refused.Name);
        Assert.Equal((first[..^1] + "2", first), (second, Statement(2).Supersedes));
        Assert.Equal(["superseded", "valid"], _register.Sheet(2).Documents.Select(document => document.Standing));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void After_a_correction_check_names_it_with_both_values_until_it_is_superseded()
    {
        _register.IssueCertificates.Run(SmallEdition.Numbers("2"));
        _register.EditWork.Run(SmallEdition.Work, title: "Harbour at Dusk", year: null, technique: null);

        var found = _register.CheckRegister.Run().Where(finding => finding.Rule == "CertificatesAgree").ToList();
        _register.IssueCertificates.Run(SmallEdition.Numbers("2"), supersede: true);

        Assert.Contains("“Harbour”", Assert.Single(found).Message, StringComparison.Ordinal);
        Assert.Contains("“Harbour at Dusk”", found[0].Message, StringComparison.Ordinal);
        Assert.DoesNotContain(_register.CheckRegister.Run(), finding => finding.Rule == "CertificatesAgree");
        Assert.Equal("Harbour at Dusk", Statement(2).Lines.Single(line => line.Key == "title").Value);
    }

    [Fact]
    public void Of_several_chosen_none_is_issued_where_one_cannot_be()
    {
        _register.IssueCertificates.Run(SmallEdition.Numbers("2"));

        Assert.Throws<RefusedException>(() => _register.IssueCertificates.Run(SmallEdition.Numbers("1-3")));

        Assert.Empty(_register.Sheet(1).Documents);
    }

    [Fact]
    public void Prints_the_number_and_head_of_the_entry_that_issued_it()
    {
        _register.IssueCertificates.Run(SmallEdition.Numbers("1"));
        var head = _register.LookAround.Head();
        _register.RecordPlace.Run("Attic");

        var issued = _register.LookAround.Entry(_register.Sheet(1).ValidCertificate!.V);

        Assert.Equal(head, issued!.Head);
    }

    private CertificateStatement Statement(int number) => CertificateStatementText.Read(_register.Sheet(number).ValidCertificate!.Statement)!;
}
