using EditionRegister.Domain.Tests.Documents;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class CertificatesAgreeTests
{
    private static readonly Work Issued = Harbour.Clean().Issued("4/12");
    private readonly string _code = Issued.The("4/12").ShownCode;

    [Theory]
    [InlineData("mm")]
    [InlineData("in")]
    public void A_certificate_agrees_in_the_units_it_was_issued_in(string units)
    {
        Assert.Empty(FindingsOf.Rule("CertificatesAgree", Harbour.Clean().Issued("4/12", units: units)));
    }

    [Fact]
    public void Facts_that_changed_are_told_with_both_values()
    {
        var work = (Issued with { Technique = "linocut" }).WithRun(run => run with { Paper = "Kitakata" });

        Assert.Equal(
            [
                $"Contradiction: Certificate EC-1 for 4/12 of “Harbour” ({_code}) states “reduction linocut” under TECHNIQUE, and the register now says “linocut”.",
                $"Contradiction: Certificate EC-1 for 4/12 of “Harbour” ({_code}) states “Hosho” under PAPER, and the register now says “Kitakata”.",
            ],
            FindingsOf.Rule("CertificatesAgree", work));
        Assert.Empty(FindingsOf.Rule("CertificatesAgree", work.WithSheet("4/12", sheet => sheet with { Documents = [sheet.Documents[0] with { Standing = "superseded" }] })));
    }

    [Fact]
    public void What_was_still_to_be_decided_then_is_asked_about()
    {
        var undecided = Harbour.Clean().WithMatrix(matrix => matrix with { Fate = "undecided" }).Issued("4/12");

        var work = undecided.WithMatrix(matrix => matrix with { Fate = "cancelled" });

        Assert.Equal(
            [$"Query: Certificate EC-1 for 4/12 of “Harbour” ({_code}) states “block not yet cancelled” under MATRIX-FATE, and the register now says “block cancelled (20 February 2026)”."],
            FindingsOf.Rule("CertificatesAgree", work));
    }

    [Fact]
    public void A_sheet_that_no_longer_has_its_number()
    {
        Assert.Equal(
            [$"Contradiction: Certificate EC-1 is valid, and the sheet it was issued for, {_code} of “Harbour”, is left out."],
            FindingsOf.Rule("CertificatesAgree", Issued.WithSheet("4/12", sheet => sheet with { Standing = "left-out", Numbering = null, Number = null })));
        Assert.Equal(
            [$"Contradiction: Certificate EC-1 is valid, and the sheet it was issued for, {_code} of “Harbour”, has no number."],
            FindingsOf.Rule("CertificatesAgree", Issued.WithSheet("4/12", sheet => sheet with { Numbering = null, Number = null })));
        Assert.Equal(
            [$"Contradiction: Certificate EC-1 is valid, and the sheet it was issued for, {_code} of “Harbour”, has a number that is not to be had."],
            FindingsOf.Rule("CertificatesAgree", Issued.WithNumber("numbered", 4, "void")));
    }

    [Fact]
    public void Several_valid_certificates()
    {
        Assert.Equal(
            [$"Contradiction: 4/12 of “Harbour” ({_code}) has 2 valid certificates: EC-1 and EC-2."],
            FindingsOf.Rule("CertificatesAgree", Issued.Issued("4/12", serial: "EC-2")));
    }

    [Fact]
    public void A_statement_damaged_is_told_and_one_erased_is_not()
    {
        Assert.Equal(
            [$"Contradiction: What certificate EC-1 for 4/12 of “Harbour” ({_code}) states cannot be read."],
            FindingsOf.Rule("CertificatesAgree", Issued.WithSheet("4/12", sheet => sheet with { Documents = [sheet.Documents[0] with { Statement = "{\"heading\":" }] })));
        Assert.Empty(FindingsOf.Rule("CertificatesAgree", Issued.WithSheet("4/12", sheet => sheet with { Documents = [sheet.Documents[0] with { Statement = null }] })));
    }
}
