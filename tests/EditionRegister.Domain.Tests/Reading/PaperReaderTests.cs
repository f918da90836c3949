using EditionRegister.Domain.Reading.Papers;

namespace EditionRegister.Domain.Tests.Reading;

/// <summary>Words for papers. Names of mills are invented; kozo, gampi and hosho are kinds of paper.</summary>
public class PaperReaderTests(string culture = "") : InCulture(culture)
{
    [Theory]
    [InlineData("Hosho 60 g", "Hosho", 60_00)]
    [InlineData("Japanese kozo, 70 g/m²", "Japanese kozo", 70_00)]
    [InlineData("Kitakata", "Kitakata", null)]
    [InlineData("card, 300 g/m²", "card", 300_00)]
    [InlineData("cotton rag, 250 g/m²", "cotton rag", 250_00)]
    [InlineData("300gsm Tarn Mill, soft white, satin", "Tarn Mill, soft white, satin", 300_00)]
    [InlineData("white Tarn Mill 410g paper", "white Tarn Mill paper", 410_00)]
    [InlineData("wove 105.5 g per m2", "wove", 105_50)]
    [InlineData("vélin 250grs", "vélin", 250_00)]
    [InlineData("Bütten, handgeschöpft, 300 g/qm", "Bütten, handgeschöpft", 300_00)]
    [InlineData("weight: 300 g/m2 rag", "rag", 300_00)]
    [InlineData("on cream Japanese paper", "cream Japanese paper", null)]
    [InlineData("Paper: kozo", "kozo", null)]
    [InlineData("heavy, watermarked laid paper", "heavy, watermarked laid paper", null)]
    [InlineData("HP, 300 g", "HP", 300_00)]
    [InlineData("NOT rag, 50% cotton, 300 g", "NOT rag, 50% cotton", 300_00)]
    public void The_name_keeps_colour_and_surface_and_the_weight_is_taken_out(string text, string name, int? grams)
    {
        var read = PaperReader.Read(text);

        Assert.Equal((name, grams), (read.Name, read.Weight?.Grams));
        Assert.Empty(read.Left);
    }

    [Theory]
    [InlineData("kozo made by Ebb Mill 70 g", "kozo", "Ebb Mill")]
    [InlineData("kozo by Ebb Mill", "kozo", "Ebb Mill")]
    [InlineData("hand-made by Mira Tolland", "hand-made", "Mira Tolland")]
    [InlineData("maker: Ebb Mill; kozo", "kozo", "Ebb Mill")]
    [InlineData("Mill: Ebb, kozo", "kozo", "Ebb")]
    [InlineData("Büttenpapier von Ebbmühle, 300 g", "Büttenpapier", "Ebbmühle")]
    [InlineData("papier fait par Moulin Ebbe", "papier", "Moulin Ebbe")]
    [InlineData("Ebb Mill kozo", "Ebb Mill kozo", null)]
    [InlineData("Büttenpapier von Hand geschöpft", "Büttenpapier von Hand geschöpft", null)]
    [InlineData("hosho printed by Mira Tolland", "hosho printed by Mira Tolland", null)]
    [InlineData("papier de Chine", "papier de Chine", null)]
    [InlineData("made by hand", "made by hand", null)]
    public void A_maker_is_who_the_text_says_made_it_and_never_a_bare_name(string text, string name, string? maker)
    {
        var read = PaperReader.Read(text);

        Assert.Equal((name, maker), (read.Name, read.Maker));
    }

    [Theory]
    [InlineData("deckle on four sides", EdgeKind.Deckle, 4)]
    [InlineData("kozo, four deckles", EdgeKind.Deckle, 4)]
    [InlineData("rag with deckled edges", EdgeKind.Deckle, null)]
    [InlineData("2 deckle edges", EdgeKind.Deckle, 2)]
    [InlineData("deckle edge on two sides", EdgeKind.Deckle, 2)]
    [InlineData("deckle-edged all round", EdgeKind.Deckle, 4)]
    [InlineData("Büttenrand", EdgeKind.Deckle, null)]
    [InlineData("4 Büttenränder", EdgeKind.Deckle, 4)]
    [InlineData("Büttenrand an drei Seiten", EdgeKind.Deckle, 3)]
    [InlineData("mit vierseitigem Büttenrand", EdgeKind.Deckle, 4)]
    [InlineData("barbes sur 4 côtés", EdgeKind.Deckle, 4)]
    [InlineData("4 barbes", EdgeKind.Deckle, 4)]
    [InlineData("barbe su quattro lati", EdgeKind.Deckle, 4)]
    [InlineData("cut edges", EdgeKind.Cut, null)]
    [InlineData("cut on two sides", EdgeKind.Cut, 2)]
    [InlineData("edges trimmed", EdgeKind.Cut, null)]
    [InlineData("kozo, beschnitten", EdgeKind.Cut, null)]
    [InlineData("torn edges", EdgeKind.Torn, null)]
    public void Edges_are_told_with_their_sides(string text, EdgeKind kind, int? sides)
    {
        Assert.Equal(new PaperEdge(kind, sides), Assert.Single(PaperReader.Read(text).Edges));
    }

    [Theory]
    [InlineData("kozo without deckle")]
    [InlineData("Bütten ohne Büttenrand")]
    [InlineData("simulated deckle edges")]
    [InlineData("cut to fit the frame")]
    public void What_is_denied_or_said_of_something_else_is_no_edge(string text)
    {
        Assert.Empty(PaperReader.Read(text).Edges);
    }

    [Theory]
    [InlineData("kozo, lot 12", "12")]
    [InlineData("batch A7, kozo", "A7")]
    [InlineData("kozo lot no. 4-b", "4-b")]
    [InlineData("Charge Nr. 2019/3", "2019/3")]
    [InlineData("a lot of paper", null)]
    public void A_lot_has_a_number(string text, string? lot)
    {
        Assert.Equal(lot, PaperReader.Read(text).Lot);
    }

    [Theory]
    [InlineData("kozo, 70 g/m², deckle on four sides", "kozo, 70 g/m², deckle on four sides")]
    [InlineData("rag 140 lb (22 x 30 in), four deckles, lot 12", "rag, 140 lb (22 × 30 in): 298.3 g/m², deckle on four sides, lot 12")]
    [InlineData("kozo by Ebb Mill, A3, bought in 2019", "kozo, made by Ebb Mill, A3, 420 × 297 mm, left as written: bought in 2019")]
    [InlineData("rag, 140 lb", "rag, 140 lb: grams not known, since the size of sheet that the pounds are counted for is not written, as in 140 lb (22 x 30 in)")]
    [InlineData("imperial rag", "imperial rag. “imperial” is an old name of sheets that differed by maker and time, so no size is taken from it. Measure the sheet")]
    [InlineData("kozo 70 g 80 g", "kozo, 70 g/m², left as written: 80 g")]
    [InlineData("rag 56 x 76", "rag 56 x 76. “56 x 76” was not read as a size: it has no unit. Write mm, cm or in behind it")]
    [InlineData("", "")]
    public void It_says_how_it_was_read(string text, string explained)
    {
        Assert.Equal(explained, PaperReader.Read(text).Explain());
    }
}

public sealed class PaperReaderInGermanTests() : PaperReaderTests("de-DE");

public sealed class PaperReaderInTurkishTests() : PaperReaderTests("tr-TR");
