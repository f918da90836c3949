using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Tests.Documents;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class CertificatesAgreeTests
{
    private static readonly Work Issued = Harbour.Clean().Issued("4/12");
    private readonly string _code = Issued.The("4/12").ShownCode;

    [Theory]
    [InlineData("measured", "mm")]
    [InlineData("measured", "in")]
    [InlineData("cco", "mm")]
    [InlineData("lc", "mm")]
    [InlineData("lc-mm", "mm")]
    public void A_certificate_agrees_however_sizes_were_written_when_it_was_issued(string writing, string units)
    {
        SizeStyle sizes = new(SizeWriting.Of(writing)!, units);

        Assert.Empty(FindingsOf.Rule("CertificatesAgree", Harbour.Clean().Issued("4/12", sizes: sizes)));
    }

    [Fact]
    public void A_size_that_changed_is_told_however_it_was_written()
    {
        var work = Harbour.Clean().Issued("4/12", sizes: new SizeStyle(SizeWriting.Cco, "mm")).WithRun(run => run with { ImageHeight = 131_000 });

        Assert.Equal(
            [$"Contradiction: Certificate EC-1 for 4/12 of “Harbour” ({_code}) states “12 × 9.05 cm (4 3/4 × 3 1/2 inches), height × width” under IMAGE-SIZE, and the register now says “131 × 90.5 mm (height × width)”."],
            FindingsOf.Rule("CertificatesAgree", work));
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
