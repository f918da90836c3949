using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class PencilAgreesWithRecordTests
{
    private static readonly Work Clean = Harbour.Clean();
    private readonly string _seven = Clean.The("7/12").ShownCode;

    [Theory]
    [InlineData("8/12", "number differs")]
    [InlineData("7/15", "size differs")]
    [InlineData("VII/XII", "notation differs")]
    [InlineData("A/P 7/12", "kind differs")]
    [InlineData("A/P II/II", "kind, notation, number and size differ")]
    public void The_pencil_says_otherwise(string pencilled, string difference)
    {
        var work = Clean.WithSheet("7/12", sheet => sheet with { Pencilled = pencilled });

        Assert.Equal([$"Contradiction: {pencilled} is pencilled on {_seven}, and the register has 7/12 of “Harbour”: {difference}."], FindingsOf.Rule("PencilAgreesWithRecord", work));
    }

    // A/P beside arabic numbers, a mark without its number and a number without the size are good practice: common practice, no source.
    [Theory]
    [InlineData("7/12", "7")]
    [InlineData("7/12", "7 / 12")]
    [InlineData("7/12", null)]
    [InlineData("A/P II/II", "A/P")]
    [InlineData("A/P II/II", "AP II")]
    [InlineData("A/P II/II", "E.A. ii/ii")]
    [InlineData("B.A.T.", "BAT")]
    public void The_pencil_may_say_less(string number, string? pencilled)
    {
        Assert.Empty(FindingsOf.Rule("PencilAgreesWithRecord", Clean.WithSheet(number, sheet => sheet with { Pencilled = pencilled })));
    }

    [Theory]
    [InlineData("Exemplar 8/12", "number differs")]
    [InlineData("7/15 signed and dated", "size differs")]
    [InlineData("Épreuve d'artiste 7/12", "kind differs")]
    public void A_pencil_that_took_words_is_compared_too(string pencilled, string difference)
    {
        var work = Clean.WithSheet("7/12", sheet => sheet with { Pencilled = pencilled });

        Assert.Equal([$"Contradiction: “{pencilled}” is pencilled on {_seven}, and the register has 7/12 of “Harbour”: {difference}."], FindingsOf.Rule("PencilAgreesWithRecord", work));
    }

    [Theory]
    [InlineData("7/12", "Exemplar 7/12")]
    [InlineData("7/12", "7/at least 10")]
    [InlineData("A/P II/II", "épreuve d'artiste")]
    [InlineData("A/P II/II", "prova d'artista II/II")]
    public void Words_that_say_the_same_agree(string number, string pencilled)
    {
        Assert.Empty(FindingsOf.Rule("PencilAgreesWithRecord", Clean.WithSheet(number, sheet => sheet with { Pencilled = pencilled })));
    }

    [Fact]
    public void A_size_pencilled_in_an_open_edition()
    {
        var work = Clean.WithNumbering("numbered", numbering => numbering with { Size = null, SizeState = "open" });

        Assert.Equal(12, FindingsOf.Rule("PencilAgreesWithRecord", work).Count);
        Assert.Contains($"Contradiction: 7/12 is pencilled on {_seven}, and the register has 7 of “Harbour”: size (open) differs.", FindingsOf.Rule("PencilAgreesWithRecord", work));
        Assert.Empty(FindingsOf.Rule("PencilAgreesWithRecord", Clean.WithNumbering("numbered", numbering => numbering with { Size = null, SizeState = "unknown" })));
    }

    [Fact]
    public void A_pencil_that_cannot_be_read()
    {
        var work = Clean.WithSheet("7/12", sheet => sheet with { Pencilled = "seven of twelve" });

        Assert.Equal([$"Query: “seven of twelve” on {_seven} cannot be read as a number, and the register has 7/12 of “Harbour”."], FindingsOf.Rule("PencilAgreesWithRecord", work));
        Assert.Empty(FindingsOf.Rule("PencilAgreesWithRecord", work.WithSheet("7/12", sheet => sheet with { Number = null })));
    }

    [Fact]
    public void A_pencil_on_a_sheet_without_a_number()
    {
        var work = Clean.WithSheet("7/12", sheet => sheet with { Numbering = null, Number = null });

        Assert.Equal([$"Query: 7/12 is pencilled on {_seven} of “Harbour”, and the register gives the sheet no number."], FindingsOf.Rule("PencilAgreesWithRecord", work));
    }

    [Fact]
    public void Another_title_on_the_sheet_is_a_note()
    {
        var work = Clean.WithSheet("7/12", sheet => sheet with { Titled = "Harbor II" });

        Assert.Equal([$"Note: “Harbor II” is pencilled on 7/12 ({_seven}), and the work is called “Harbour”."], FindingsOf.Rule("PencilAgreesWithRecord", work));
        Assert.Empty(FindingsOf.Rule("PencilAgreesWithRecord", Clean.WithSheet("7/12", sheet => sheet with { Titled = " \"HARBOUR\"" })));
        Assert.Equal([$"Note: “Harbour” is pencilled on 7/12 ({_seven}), and the work is called Untitled."], FindingsOf.Rule("PencilAgreesWithRecord", Clean with { TitleState = "untitled", Title = null, Impressions = [Clean.The("7/12")] }));
    }
}
