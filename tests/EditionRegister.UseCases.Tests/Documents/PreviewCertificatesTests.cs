using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.UseCases.Tests.Documents;

/// <summary>What is looked at is what is issued, and looking issues nothing.</summary>
public sealed class PreviewCertificatesTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public PreviewCertificatesTests()
    {
        _register = SmallEdition.Make(_temp.Register);
        _register.InscribeImpressions.Run(SmallEdition.Numbers("1-4"), new WhatStandsOnIt { AsSpelled = true, Signature = "M. Tolland" });
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void States_what_is_then_issued_and_leaves_the_logbook_as_it_was()
    {
        var before = _register.LookAround.Head();

        var looked = _register.PreviewCertificates.Run(SmallEdition.Numbers("2, 4"));

        Assert.Equal(before, _register.LookAround.Head());
        _register.IssueCertificates.Run(SmallEdition.Numbers("2, 4"));
        Assert.Equal(Stored(2, 4), looked.Select(preview => CertificateStatementText.Write(preview.Statement!)));
        Assert.All(looked, preview => Assert.Null(preview.Head));
    }

    [Fact]
    public void States_which_one_it_takes_the_place_of()
    {
        var first = _register.IssueCertificates.Run(SmallEdition.Numbers("2")).Single();

        var looked = _register.PreviewCertificates.Run(SmallEdition.Numbers("2"), supersede: true).Single();

        Assert.Equal(first, looked.Statement!.Supersedes);
        _register.IssueCertificates.Run(SmallEdition.Numbers("2"), supersede: true);
        Assert.Equal(Stored(2).Single(), CertificateStatementText.Write(looked.Statement));
    }

    [Fact]
    public void Says_of_each_sheet_why_it_gets_none_in_the_words_of_the_refusal()
    {
        _register.IssueCertificates.Run(SmallEdition.Numbers("2"));

        var looked = _register.PreviewCertificates.Run(SmallEdition.Numbers("1, 2"));

        Assert.NotNull(looked[0].Statement);
        Assert.Equal((null, Assert.Throws<RefusedException>(() => _register.IssueCertificates.Run(SmallEdition.Numbers("2"))).Message), (looked[1].Statement, looked[1].Refusal));
    }

    [Fact]
    public void One_that_stands_is_shown_as_it_was_issued_with_the_head_of_its_entry()
    {
        _register.IssueCertificates.Run(SmallEdition.Numbers("1"));
        var head = _register.LookAround.Head();
        _register.EditWork.Run(SmallEdition.Work, title: "Harbour at Dusk", year: null, technique: null);

        var looked = _register.PreviewStandingCertificates.Run(SmallEdition.Numbers("1, 3"));

        Assert.Equal((Stored(1).Single(), head), (CertificateStatementText.Write(looked[0].Statement!), looked[0].Head));
        Assert.Equal((null, $"No certificate stands for {looked[1].Code}. Nothing was written. Issue one with `edreg certificate issue`."), (looked[1].Statement, looked[1].Refusal));
    }

    private IEnumerable<string?> Stored(params int[] numbers) => numbers.Select(number => _register.Sheet(number).ValidCertificate!.Statement);
}
