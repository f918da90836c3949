using System.Globalization;
using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Domain.Tests.Reading;

public class TechniqueListTests(string culture = "") : InCulture(culture)
{
    /// <summary>
    /// Ids of the Getty Art &amp; Architecture Thesaurus with the label that each was checked by: american-art/ima at 8d1014e
    /// (IMA-Object-Types-AAT-data.csv, IMA-Technique-AAT-data.csv); relief prints by american-art/AAT-Term-Mappings at 821b571.
    /// </summary>
    private static readonly (string Label, string Aat, string Word)[] Verified =
    [
        ("prints", "300041273", "print"),
        ("relief prints", "300041391", "relief-print"),
        ("woodcuts", "300041405", "woodcut"),
        ("color woodcuts", "300041412", "colour-woodcut"),
        ("wood engravings", "300041402", "wood-engraving"),
        ("linocuts", "300041393", "linocut"),
        ("intaglio prints", "300041338", "intaglio-print"),
        ("etchings", "300041365", "etching"),
        ("soft-ground etchings", "300041376", "soft-ground-etching"),
        ("relief etchings", "300041375", "relief-etching"),
        ("aquatints", "300041366", "aquatint"),
        ("lift-ground", "300053243", "lift-ground"),
        ("sugar-lift", "300190346", "sugar-lift"),
        ("drypoints", "300041349", "drypoint"),
        ("mezzotints", "300041356", "mezzotint"),
        ("engravings", "300041340", "engraving"),
        ("line engravings", "300041352", "line-engraving"),
        ("photogravures", "300154382", "photogravure"),
        ("collagraphs", "300041339", "collagraph"),
        ("lithographs", "300041379", "lithograph"),
        ("color lithographs", "300041383", "colour-lithograph"),
        ("transfer lithographs", "300263141", "transfer-lithograph"),
        ("offset lithographs", "300192896", "offset-lithograph"),
        ("photolithographs", "300154386", "photolithograph"),
        ("planographic prints", "300178376", "planographic-print"),
        ("screen prints", "300178688", "screenprint"),
        ("photoscreenprints", "300265560", "photo-screenprint"),
        ("stenciling", "300053433", "stencil"),
        ("pochoir", "300053436", "pochoir"),
        ("monotypes", "300041538", "monotype"),
        ("digital prints", "300312222", "digital-print"),
        ("inkjet prints", "300265621", "inkjet-print"),
        ("hand coloring", "300133555", "hand-colouring"),
        ("block printing", "300053289", "block-print"),
    ];

    [Fact]
    public void Every_verified_id_is_given_and_no_other()
    {
        var given = Technique.All.Where(technique => technique.Aat.Length > 0).Select(technique => (technique.Aat, technique.Word));

        Assert.Equal(Verified.Select(one => (one.Aat, one.Word)).Order(), given.Order());
    }

    [Fact]
    public void The_label_of_every_verified_id_reads_as_the_technique_that_has_it()
    {
        Assert.All(Verified, one => Assert.Equal([one.Word], Words(one.Label)));
    }

    [Fact]
    public void Words_are_permanent_and_each_stands_once()
    {
        // As they were when techniques were first read; a register may hold any of them.
        string[] first =
        [
            "reduction-linocut", "reduction-woodcut", "linocut", "colour-woodcut", "wood-engraving", "woodcut", "relief-etching", "relief-print", "collagraph", "soft-ground-etching", "lift-ground", "sugar-lift",
            "line-etching", "photo-etching", "etching", "aquatint", "drypoint", "mezzotint", "line-engraving", "stipple-engraving", "type-metal-engraving", "photogravure", "photoengraving", "collotype", "spit-bite",
            "open-bite", "engraving", "intaglio-print", "transfer-lithograph", "offset-lithograph", "photolithograph", "chromolithograph", "colour-lithograph", "lithograph", "planographic-print", "photo-screenprint",
            "screenprint", "pochoir", "stencil", "monotype", "monoprint", "inkjet-print", "digital-print", "block-print", "letterpress", "chine-colle", "embossing", "hand-colouring", "viscosity-print",
            "carborundum-print", "cliche-verre", "mokuhanga", "print",
        ];

        Assert.Empty(first.Except(Technique.All.Select(technique => technique.Word)));
        Assert.Equal(Technique.All.Count, Technique.All.Select(technique => technique.Word).Distinct().Count());
        Assert.All(Technique.All, technique => Assert.Matches("^[a-z]+(-[a-z]+)*$", technique.Word));
        Assert.All(Technique.All, technique => Assert.Same(technique, Technique.Find(technique.Word)));
        Assert.Null(Technique.Find("oil-painting"));
    }

    [Fact]
    public void Every_technique_is_of_a_family_and_no_family_is_empty()
    {
        Assert.Equal(TechniqueFamily.All.OrderBy(family => family.Word), Technique.All.Select(technique => technique.Family).Distinct().OrderBy(family => family.Word));
    }

    [Fact]
    public void The_name_and_the_word_of_every_technique_read_as_that_technique_alone()
    {
        foreach (var technique in Technique.All)
        {
            foreach (var text in new[] { technique.Name, technique.Word, technique.Name.ToUpper(CultureInfo.CurrentCulture), technique.Name + "s" })
            {
                var read = TechniqueReader.Read(text);

                Assert.Equal((text, technique.Word), (text, string.Join(' ', read.Techniques.Select(one => one.Word))));
                Assert.Empty(read.Left);
            }
        }
    }

    // In Turkish the capital of i is İ and the small letter of I is ı.
    [Fact]
    public void Every_way_to_write_a_technique_reaches_it_in_capitals_and_small_letters_of_the_culture()
    {
        var here = CultureInfo.CurrentCulture;

        foreach (var (technique, writing) in Technique.All.SelectMany(technique => technique.Writings, (technique, writing) => (technique, writing)))
        {
            var bare = writing.TrimStart('~');

            foreach (var text in new[] { bare, bare.ToUpper(here), bare.ToUpperInvariant().ToLower(here), bare.Normalize(System.Text.NormalizationForm.FormD) })
            {
                // What needs company is met beside another technique; beside a linocut, a reduction is a reduction linocut.
                var (read, wanted) = writing == bare ? (Words(text), technique.Word)
                    : technique.Word == "reduction-print" ? (Words("linocut, " + text), "reduction-linocut")
                    : (Words("linocut, " + text).Skip(1), technique.Word);

                Assert.Equal((text, wanted), (text, string.Join(' ', read)));
            }
        }
    }

    private static IEnumerable<string> Words(string text) => TechniqueReader.Read(text).Techniques.Select(technique => technique.Word);
}

public sealed class TechniqueListInGermanTests() : TechniqueListTests("de-DE");

public sealed class TechniqueListInTurkishTests() : TechniqueListTests("tr-TR");
