using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Tests.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Documents;

public class CertificateConditionsTests
{
    private static readonly Work Clean = Harbour.Clean();
    private readonly string _four = $"4/12 of “Harbour” ({Clean.The("4/12").ShownCode})";

    [Theory]
    [InlineData("4/12")]
    [InlineData("A/P II/II")]
    [InlineData("B.A.T.")]
    public void A_numbered_sheet_of_a_whole_edition_gets_one(string number)
    {
        var thrown = Record.Exception(() => CertificateConditions.Demand(Clean, Clean.The(number)));

        Assert.Null(thrown);
    }

    [Fact]
    public void Refused_for_a_sheet_left_out()
    {
        var sheet = Clean.The("left out");

        Assert.Equal(
            ("certificate-sheet-not-kept", $"No certificate was issued: sheet {sheet.ShownCode} of “Harbour” is left out, and only a kept sheet or a numbered proof gets one. Keep the sheet and number it first."),
            Refusal(Clean, "left out"));
    }

    [Fact]
    public void Refused_for_a_sheet_without_a_number()
    {
        var work = Clean.WithSheet("spare", sheet => sheet with { Standing = "kept" });

        Assert.Equal(
            ("certificate-sheet-not-numbered", $"No certificate was issued: sheet {work.The("kept").ShownCode} of “Harbour” has no number yet. Number it first."),
            Refusal(work, "kept"));
    }

    [Fact]
    public void Refused_for_an_edition_that_is_not_ours_or_not_whole()
    {
        Assert.Equal(
            ("certificate-edition-not-ours", $"No certificate was issued: the edition of {_four} is someone else's, and only who made an edition can certify it. Ask its maker or publisher."),
            Refusal(Clean.WithEdition(edition => edition with { Extent = "someone-elses" }), "4/12"));
        Assert.Equal(
            ("certificate-edition-partly-known", $"No certificate was issued: the edition of {_four} is only partly known to this register, and a certificate says how large all of it is. Account for every number with `edreg fate`, then say that it is whole with `edreg whole`."),
            Refusal(Clean.WithEdition(edition => edition with { Extent = "partly-known" }), "4/12"));
    }

    [Fact]
    public void Refused_while_another_stands()
    {
        Assert.Equal(
            ("certificate-stands-already", $"No certificate was issued: EC-1 already stands for {_four}. Let a new one take its place with --supersede, or leave it."),
            Refusal(Clean.Issued("4/12"), "4/12"));
        Assert.Equal("certificate-stands-already", Refusal(Clean.Issued("4/12"), "4/12", supersedes: "EC-7")?.Name);
        Assert.Null(Refusal(Clean.Issued("4/12"), "4/12", supersedes: "EC-1"));
        Assert.Null(Refusal(Clean.Issued("4/12", standing: "withdrawn"), "4/12"));
    }

    [Fact]
    public void Refused_where_nothing_stands_to_be_superseded()
    {
        Assert.Equal(
            ("certificate-to-supersede-not-valid", $"No certificate was issued: EC-1 is no valid certificate for {_four}, so nothing can take its place. Issue a first certificate instead."),
            Refusal(Clean.Issued("4/12", standing: "withdrawn"), "4/12", supersedes: "EC-1"));
    }

    [Fact]
    public void Refused_where_a_fact_it_states_is_contradicted()
    {
        var work = Clean.WithSheet("4/12", sheet => sheet with { Pencilled = "4/15" });

        Assert.Equal(
            ("certificate-contradicted", $"No certificate was issued for {_four}, because the register contradicts what it would state. 4/15 is pencilled on {Clean.The("4/12").ShownCode}, and the register has 4/12 of “Harbour”: size differs. Put that right first."),
            Refusal(work, "4/12"));
        Assert.Null(Refusal(work, "5/12"));
    }

    [Fact]
    public void Refused_where_a_number_of_the_edition_is_borne_twice()
    {
        var work = Clean.WithSheet("7/12", sheet => sheet with { Pencilled = "8/12" });

        Assert.Equal("certificate-contradicted", Refusal(work, "8/12")?.Name);
        Assert.Equal("certificate-contradicted", Refusal(work, "4/12")?.Name);
    }

    // Where a sheet is, whose it is and how many sheets were spoiled, a certificate does not state.
    [Fact]
    public void What_it_does_not_state_does_not_stand_in_its_way()
    {
        Assert.Null(Refusal(Clean.WithSheet("4/12", sheet => sheet with { Ownership = [] }), "4/12"));
        Assert.Null(Refusal(Clean.WithRun(run => run with { Started = 99 }), "4/12"));
        Assert.Null(Refusal(Clean.WithMatrix(matrix => matrix with { Fate = "undecided" }), "4/12"));
        Assert.Null(Refusal(Clean.WithSheet("4/12", sheet => sheet with { Pencilled = "four" }), "4/12"));
    }

    // A certificate that no longer agrees is the very reason for a new one.
    [Fact]
    public void A_certificate_that_no_longer_agrees_can_be_superseded()
    {
        var work = Clean.Issued("4/12") with { Technique = "linocut" };

        Assert.NotEmpty(FindingsOf.Rule("CertificatesAgree", work));
        Assert.Null(Refusal(work, "4/12", supersedes: "EC-1"));
    }

    private static (string Name, string Message)? Refusal(Work work, string number, string? supersedes = null) =>
        Record.Exception(() => CertificateConditions.Demand(work, work.The(number), supersedes)) is { } thrown
            ? Assert.IsType<RefusedException>(thrown) is var refused ? (refused.Name, refused.Message) : null
            : null;
}
