using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Domain.Tests.Reading;

/// <summary>How people write techniques is common practice, no source, but where a source is named.</summary>
public class TechniqueReaderTests(string culture = "") : InCulture(culture)
{
    [Theory]
    [InlineData("reduction linocut in 4 colours on Japanese paper", "reduction linocut; 4 colours; on Japanese paper")]
    [InlineData("Etching with aquatint", "etching, aquatint")]
    [InlineData("lithograph over monotype", "lithograph, monotype")]
    [InlineData("Etching and soft-ground etching", "etching, soft-ground etching")]
    [InlineData("Line and stipple engraving", "line engraving, stipple engraving")]
    [InlineData("Hard and soft ground etching", "hard-ground etching, soft-ground etching")]
    [InlineData("intaglio: sugar lift & spit-bite aquatint", "intaglio print, sugar lift, spit bite, aquatint")]
    [InlineData("linocut, etching, LINOCUT", "linocut, etching")]
    [InlineData("linocut (reduction)", "reduction linocut")]
    [InlineData("Woodcut, reduction method, 5 colours", "reduction woodcut; 5 colours")]
    [InlineData("hand-coloured linocut", "hand-colouring, linocut")]
    [InlineData("wood-engraving", "wood engraving")]
    [InlineData("giclée print", "inkjet print")]
    [InlineData("ghost print from a drypoint", "ghost print, drypoint")]
    public void Techniques_are_named_in_the_order_of_the_text_each_once(string text, string words)
    {
        Assert.Equal(words, TechniqueReader.Read(text).InWords());
    }

    [Theory]
    [InlineData("linogravure à planche perdue en 3 couleurs", "reduction linocut; 3 colours")]
    [InlineData("eau-forte et aquatinte sur vélin", "etching, aquatint; on vélin")]
    [InlineData("gravure à l'eau-forte", "etching")]
    [InlineData("bois gravé en couleurs", "colour woodcut")]
    [InlineData("Farblinolschnitt, vierfarbig, auf Bütten", "linocut; 4 colours; on Bütten")]
    [InlineData("Dreifarbenholzschnitt", "woodcut; 3 colours")]
    [InlineData("Farbradierung", "etching; in colour")]
    [InlineData("Farbholzschnitt", "colour woodcut")]
    [InlineData("Dreifarbiger Holzschnitt von drei Stöcken", "woodcut; 3 colours; from 3 blocks")]
    [InlineData("Linolschnitt von der verlorenen Platte", "reduction linocut")]
    [InlineData("Radierungen und Kaltnadel", "etching, drypoint")]
    [InlineData("xilografia a tre colori su carta giapponese", "woodcut; 3 colours; on carta giapponese")]
    [InlineData("acquaforte, acquatinta e puntasecca", "etching, aquatint, drypoint")]
    [InlineData("litografia a colori", "colour lithograph")]
    [InlineData("grabado al aguafuerte en papel", "etching")]
    [InlineData("linograbado a plancha perdida sobre papel japonés", "reduction linocut; on papel japonés")]
    public void Other_languages_are_read_too(string text, string words)
    {
        Assert.Equal(words, TechniqueReader.Read(text).InWords());
    }

    [Theory]
    [InlineData("Linocut in 4 colours", 4, false)]
    [InlineData("two-color lithograph", 2, false)]
    [InlineData("lithographie à trois couleurs", 3, false)]
    [InlineData("Vierfarbiger Linolschnitt", 4, false)]
    [InlineData("screenprint in twenty-four colors", 24, false)]
    [InlineData("Aquatint 8 colors on paper", 8, false)]
    [InlineData("color etching", null, true)]
    [InlineData("etching and aquatint in color", null, true)]
    [InlineData("eau-forte en couleurs", null, true)]
    [InlineData("eight color screenprints", null, true)]
    [InlineData("color woodcut", null, false)]
    [InlineData("woodcut in colors", null, false)]
    [InlineData("chromolithograph, colors", null, false)]
    [InlineData("linocut on coloured paper", null, false)]
    [InlineData("linocut with watercolors", null, false)]
    public void Colours_are_counted_or_said_where_no_technique_says_them(string text, int? colours, bool inColour)
    {
        var read = TechniqueReader.Read(text);

        Assert.Equal((colours, inColour), (read.Colours, read.InColour));
    }

    [Theory]
    [InlineData("Color lithograph", "colour-lithograph")]
    [InlineData("lithograph in colors", "colour-lithograph")]
    [InlineData("woodcut printed in colours", "colour-woodcut")]
    [InlineData("color woodcut and lithograph", "colour-woodcut lithograph")]
    [InlineData("woodcut in 12 colors", "woodcut")]
    public void Colour_without_a_number_names_the_technique_that_the_list_has_for_it(string text, string words)
    {
        Assert.Equal(words, Words(text));
    }

    [Theory]
    [InlineData("woodcut from three blocks", "3 blocks")]
    [InlineData("Woodcut, 23 blocks, 12 colors on paper", "23 blocks")]
    [InlineData("etching from two plates on paper", "2 plates")]
    [InlineData("color lithograph from eleven stones", "11 stones")]
    [InlineData("linogravure de trois planches", "3 plates")]
    [InlineData("two-plate etching", "2 plates")]
    [InlineData("Etching, two plates, three colours", "2 plates")]
    [InlineData("portfolio of etchings, 12 plates", null)]
    [InlineData("etchings with 12 plates", null)]
    [InlineData("woodcut", null)]
    public void Matrices_are_counted(string text, string? matrices)
    {
        Assert.Equal(matrices, TechniqueReader.Read(text).Matrices?.ToString());
    }

    [Theory]
    [InlineData("etching on cream laid paper, 3/20", "cream laid paper")]
    [InlineData("ink on German Etching paper, lithograph", "German Etching paper")]
    [InlineData("lithograph on silk in 3 colours", "silk")]
    [InlineData("lithograph on paper with embossing", "paper")]
    [InlineData("linocut on paper from two blocks", "paper")]
    [InlineData("etching on heavy, wove paper", "heavy, wove paper")]
    [InlineData("etching on J. Whatman 1961 paper. Printed by the artist", "J. Whatman 1961 paper")]
    [InlineData("Radierung, Träger: Kupferdruckpapier", "Kupferdruckpapier")]
    [InlineData("linocut, Japanese paper", "Japanese paper")]
    [InlineData("woodcut mounted on a scroll", null)]
    [InlineData("crayon on etching", null)]
    [InlineData("etching on copper", null)]
    [InlineData("photo-etching on copperplate on paper", "paper")]
    [InlineData("lithograph on zinc", null)]
    [InlineData("screenprint on steel", "steel")]
    [InlineData("lithograph on German Copperplate paper", "German Copperplate paper")]
    [InlineData("linocut", null)]
    public void The_support_is_kept_as_written(string text, string? support)
    {
        Assert.Equal(support, TechniqueReader.Read(text).Support);
    }

    [Fact]
    public void Chine_colle_is_a_technique_within_the_words_for_the_support_too()
    {
        var read = TechniqueReader.Read("lithograph on Japan paper chine collé");

        Assert.Equal("lithograph, chine collé; on Japan paper chine collé", read.InWords());
    }

    [Theory]
    [InlineData("Gelatin silver print")]
    [InlineData("Photograph, gelatin silver print on paper")]
    [InlineData("albumen print")]
    [InlineData("chromogenic color print")]
    [InlineData("16 hand-coloured photographs, gelatin silver print on paper on board")]
    [InlineData("hand-painted porcelain")]
    [InlineData("etched glass")]
    [InlineData("etched and engraved glass goblet")]
    [InlineData("engraving on glass")]
    [InlineData("engraved gem")]
    [InlineData("carnelian intaglio")]
    [InlineData("lithographed tin")]
    [InlineData("engraved copper plate")]
    [InlineData("lithographic crayon on paper")]
    [InlineData("etching press")]
    [InlineData("embossed leather")]
    [InlineData("plaster relief")]
    [InlineData("bronze relief")]
    [InlineData("block printed cotton")]
    [InlineData("rubbing on paper")]
    [InlineData("oil on canvas")]
    [InlineData("pen and ink on paper")]
    [InlineData("printed paper")]
    [InlineData("fingerprint")]
    [InlineData("blueprint")]
    public void What_is_no_print_has_no_technique(string text)
    {
        Assert.Equal("", Words(text));
    }

    [Theory]
    [InlineData("lithograph after an engraving by a pupil", "lithograph", "after an engraving by a pupil")]
    [InlineData("Radierung nach einem Holzschnitt", "etching", "nach einem Holzschnitt")]
    [InlineData("lithographie d'après une gravure", "lithograph", "d'après une gravure")]
    [InlineData("etching after Mueller's woodcut", "etching", "after Mueller's woodcut")]
    [InlineData("drypoint without aquatint", "drypoint", "without aquatint")]
    [InlineData("after an etching and a drypoint, linocut", "linocut", "after an etching and a drypoint")]
    [InlineData("facsimile of an etching", "", "facsimile of an etching")]
    public void The_work_after_another_is_not_of_its_technique(string text, string words, string left)
    {
        var read = TechniqueReader.Read(text);

        Assert.Equal(words, string.Join(' ', read.Techniques.Select(technique => technique.Word)));
        Assert.Equal([left], read.Left);
    }

    [Fact]
    public void After_a_painting_the_technique_that_follows_a_comma_holds()
    {
        Assert.Equal("engraving", Words("after a painting by a friend, engraving"));
    }

    [Fact]
    public void A_technique_that_needs_company_counts_beside_another()
    {
        Assert.Equal("etching relief-print", Words("etching and relief"));
        Assert.Equal("", Words("relief"));
        Assert.Equal("hand-colouring print", Words("hand-colored print"));
        Assert.Equal("hand-colouring", Words("hand-colored"));
    }

    [Fact]
    public void What_is_not_understood_is_left_as_written()
    {
        var read = TechniqueReader.Read("Etching in brown ink on light green paper; third state (of four), Set 3, drypoint?");

        Assert.Equal(["brown ink", "third state (of four)", "Set 3", "?"], read.Left);
    }

    [Fact]
    public void A_mistyped_word_is_left_and_asked_about()
    {
        var read = TechniqueReader.Read("Etching, open bite etching and aquating on Arches, Set 3");

        Assert.Equal("etching, open bite; on Arches", read.InWords());
        Assert.Equal("not known to the list: “aquating” (is aquatint meant?), “Set 3”", read.NotKnown());
    }

    [Fact]
    public void Nothing_left_is_said_as_nothing_and_much_left_is_cut_short()
    {
        Assert.Null(TechniqueReader.Read("linocut").NotKnown());
        Assert.Equal("not known to the list: “one”, “two”, “three”, “four”, “five”, “six” and 2 more", TechniqueReader.Read("linocut; one; two; three; four; five; six; seven; eight").NotKnown());
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData(" \t\n")]
    public void Of_no_text_nothing_is_read(string? text)
    {
        var read = TechniqueReader.Read(text);

        Assert.Equal("no technique of the list", read.InWords());
        Assert.Null(read.NotKnown());
    }

    [Fact]
    public void The_registers_own_techniques_are_met_by_word_and_name_before_the_list()
    {
        Technique[] own = [new("sand-lith", "sand lithograph"), new("tetra-cut", "carton cut")];

        var read = TechniqueReader.Read("Sand lithograph over carton cuts, tetra-cut and etching", own);

        Assert.Equal("sand lithograph, carton cut, etching", read.InWords());
        Assert.Equal("lithograph", Words("lithograph"));
    }

    [Fact]
    public void Words_without_a_technique_of_the_list_are_read_for_the_rest()
    {
        var read = TechniqueReader.Read("coffee lift in 3 colours on Japanese paper");

        Assert.Equal("no technique of the list; 3 colours; on Japanese paper", read.InWords());
        Assert.Equal("not known to the list: “coffee lift”", read.NotKnown());
    }

    private static string Words(string text) => string.Join(' ', TechniqueReader.Read(text).Techniques.Select(technique => technique.Word));
}

public sealed class TechniqueReaderInGermanTests() : TechniqueReaderTests("de-DE");

public sealed class TechniqueReaderInTurkishTests() : TechniqueReaderTests("tr-TR");
