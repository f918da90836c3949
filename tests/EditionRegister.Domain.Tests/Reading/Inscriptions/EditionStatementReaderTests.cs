using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Reading.Inscriptions;

/// <summary>Pencilled numbers and cataloguers' sentences. Marks as glossaries of the trade give them; the sentences are in their manner, invented.</summary>
public class EditionStatementReaderTests(string culture = "") : InCulture(culture)
{
    [Theory]
    [InlineData("3/12", StatementKind.Numbered, "edition", 3, 12)]
    [InlineData("3⁄12", StatementKind.Numbered, "edition", 3, 12)]
    [InlineData("IV/X", StatementKind.Numbered, "edition", 4, 10)]
    [InlineData("iiii/x", StatementKind.Numbered, "edition", 4, 10)]
    [InlineData("XLII/C", StatementKind.Numbered, "edition", 42, 100)]
    [InlineData("Harbour 3/12 M. Tolland 2026", StatementKind.Numbered, "edition", 3, 12)]
    [InlineData("Edition 35 of 75", StatementKind.Numbered, "edition", 35, 75)]
    [InlineData("Exemplar 3/40", StatementKind.Numbered, "edition", 3, 40)]
    [InlineData("12/50 É.A.", StatementKind.Proof, "A/P", 12, 50)]
    [InlineData("Épreuve d’artiste 3/10", StatementKind.Proof, "A/P", 3, 10)]
    [InlineData("P.d.A. II/V", StatementKind.Proof, "A/P", 2, 5)]
    [InlineData("P/A 3/20", StatementKind.Proof, "A/P", 3, 20)]
    [InlineData("prova d'autore", StatementKind.Proof, "A/P", null, null)]
    [InlineData("F.C. 2/5", StatementKind.Proof, "H.C.", 2, 5)]
    [InlineData("h.c. 9-10", StatementKind.Proof, "H.C.", 9, 10)]
    [InlineData("bon à tirer", StatementKind.Proof, "B.A.T.", null, null)]
    [InlineData("R.T.P.", StatementKind.Proof, "B.A.T.", null, null)]
    [InlineData("C.T.P. 3", StatementKind.Proof, "C.T.P.", 3, null)]
    [InlineData("Probedruck", StatementKind.Proof, "T/P", null, null)]
    [InlineData("edition of 75 plus 10 artist's proofs", StatementKind.Size, "edition", null, 75)]
    [InlineData("tirage à 30 exemplaires", StatementKind.Size, "edition", null, 30)]
    [InlineData("tiratura di 100 esemplari", StatementKind.Size, "edition", null, 100)]
    [InlineData("tirada de 50 ejemplares", StatementKind.Size, "edition", null, 50)]
    [InlineData("Auflage 40", StatementKind.Size, "edition", null, 40)]
    [InlineData("?/75", StatementKind.Size, "edition", null, 75)]
    [InlineData("07/35", StatementKind.Numbered, "edition", 7, 35)]
    [InlineData("XXv/XXV", StatementKind.Numbered, "edition", 25, 25)]
    [InlineData("2/XX", StatementKind.Numbered, "edition", 2, 20)]
    [InlineData("18/?", StatementKind.Numbered, "edition", 18, null)]
    [InlineData("35 of 75", StatementKind.Numbered, "edition", 35, 75)]
    [InlineData("NO 19 OF 120", StatementKind.Numbered, "edition", 19, 120)]
    [InlineData("n. 5/20", StatementKind.Numbered, "edition", 5, 20)]
    [InlineData("nº 5/20", StatementKind.Numbered, "edition", 5, 20)]
    [InlineData("Ed. 100 - no. 3", StatementKind.Numbered, "edition", 3, 100)]
    [InlineData("#18 of a recorded edition of 24", StatementKind.Numbered, "edition", 18, 24)]
    [InlineData("11th of an estimated 12 casts", StatementKind.Numbered, "edition", 11, 12)]
    [InlineData("First impression of an edition of twelve", StatementKind.Numbered, "edition", 1, 12)]
    [InlineData("Harbour / 1963/2012 / 18/60", StatementKind.Numbered, "edition", 18, 60)]
    [InlineData("Etching, 5/78", StatementKind.Numbered, "edition", 5, 78)]
    [InlineData("3/12 1/98", StatementKind.Numbered, "edition", 3, 12)]
    [InlineData("3/12, 1998", StatementKind.Numbered, "edition", 3, 12)]
    [InlineData("Harbour 3/16", StatementKind.Numbered, "edition", 3, 16)]
    [InlineData("AP-3", StatementKind.Proof, "A/P", 3, null)]
    [InlineData("AP-3/5", StatementKind.Proof, "A/P", 3, 5)]
    [InlineData("12 ex.", StatementKind.Size, "edition", null, 12)]
    [InlineData("20 numbered from 1 to 20", StatementKind.Size, "edition", null, 20)]
    [InlineData("2nd trial proof", StatementKind.Proof, "T/P", 2, null)]
    [InlineData("l.c. A.P. 4/10", StatementKind.Proof, "A/P", 4, 10)]
    [InlineData("trial/ proof/ Harbour", StatementKind.Proof, "T/P", null, null)]
    [InlineData("e\u0301preuve d'artiste 3/10", StatementKind.Proof, "A/P", 3, 10)]
    [InlineData("etching, proof", StatementKind.Proof, "proof", null, null)]
    [InlineData("seventy-five impressions", StatementKind.Size, "edition", null, 75)]
    [InlineData("tirage à vingt-cinq exemplaires", StatementKind.Size, "edition", null, 25)]
    [InlineData("Auflage von fünfundsiebzig Exemplaren", StatementKind.Size, "edition", null, 75)]
    [InlineData("edición limitada a cincuenta y cinco ejemplares", StatementKind.Size, "edition", null, 55)]
    [InlineData("tiratura limitata a settantacinque esemplari", StatementKind.Size, "edition", null, 75)]
    [InlineData("7 imp.", StatementKind.Size, "edition", null, 7)]
    [InlineData("unlimited", StatementKind.Open, null, null, null)]
    [InlineData("tirage illimité", StatementKind.Open, null, null, null)]
    [InlineData("3/unlimited", StatementKind.Open, "edition", 3, null)]
    public void Number_size_and_kind_are_read_in_five_languages(string text, StatementKind kind, string? series, int? number, int? of)
    {
        var read = EditionStatementReader.Read(text);

        Assert.Equal((kind, series, number, of), (read.Kind, read.Series, read.Number, read.Of));
    }

    [Theory]
    [InlineData("32/at least 49", SizeHedge.AtLeast, 49)]
    [InlineData("9/possibly 45", SizeHedge.About, 45)]
    [InlineData("5/c. 20", SizeHedge.About, 20)]
    [InlineData("/75?", SizeHedge.About, 75)]
    [InlineData("edition of approx. 40", SizeHedge.About, 40)]
    [InlineData("tirage d'environ 40", SizeHedge.About, 40)]
    [InlineData("at least 61", SizeHedge.AtLeast, 61)]
    [InlineData("au moins 61", SizeHedge.AtLeast, 61)]
    [InlineData("mindestens 61", SizeHedge.AtLeast, 61)]
    public void A_hedged_size_says_how_it_is_hedged(string text, SizeHedge hedge, int of)
    {
        var read = EditionStatementReader.Read(text);

        Assert.Equal((hedge, of), (read.Hedge, read.Of));
    }

    [Theory]
    [InlineData("edition between 75 and 100", SizeHedge.About, 75, 100)]
    [InlineData("?/125-130", SizeHedge.About, 125, 130)]
    [InlineData("entre 75 et 100", SizeHedge.About, 75, 100)]
    [InlineData("less than 100", SizeHedge.AtMost, null, 99)]
    [InlineData("edition of up to 40", SizeHedge.AtMost, null, 40)]
    [InlineData("?/100 or less", SizeHedge.AtMost, null, 100)]
    [InlineData("höchstens 40", SizeHedge.AtMost, null, 40)]
    public void A_bound_is_kept_as_a_bound_and_not_as_a_size(string text, SizeHedge hedge, int? least, int most)
    {
        var read = EditionStatementReader.Read(text);

        Assert.Equal((StatementKind.Size, null, hedge, new SizeBounds(least, most)), (read.Kind, read.Of, read.Hedge, read.Bounds));
    }

    [Fact]
    public void A_question_mark_beside_the_number_is_told_from_one_beside_the_size()
    {
        var number = EditionStatementReader.Read("3(?)/25");
        var size = EditionStatementReader.Read("3/25(?)");

        Assert.Equal((3, 25, true, SizeHedge.None), (number.Number, number.Of, number.NumberIsDoubted, number.Hedge));
        Assert.Equal((3, 25, false, SizeHedge.About), (size.Number, size.Of, size.NumberIsDoubted, size.Hedge));
    }

    [Theory]
    [InlineData("N of edition of 16", "N", 16)]
    [InlineData("copy C of edition of 26", "C", 26)]
    [InlineData("Exemplar H", "H", null)]
    public void A_lettered_copy_has_a_letter_and_no_number(string text, string letter, int? of)
    {
        var read = EditionStatementReader.Read(text);

        Assert.Equal((StatementKind.Numbered, null, letter, of), (read.Kind, read.Number, read.Letter, read.Of));
    }

    [Theory]
    [InlineData("second state of three", 2, 3, false)]
    [InlineData("first state (of two)", 1, 2, false)]
    [InlineData("State II", 2, null, true)]
    [InlineData("II/III state", 2, 3, true)]
    [InlineData("2. Zustand von 3", 2, 3, false)]
    [InlineData("1er état", 1, null, false)]
    [InlineData("only known state", 1, 1, false)]
    [InlineData("Twenty-ninth state", 29, null, false)]
    [InlineData("final (seventh) state", 7, 7, false)]
    [InlineData("third and final state", 3, 3, false)]
    [InlineData("etching, later state", null, null, false)]
    [InlineData("Harbour (State)", null, null, false)]
    [InlineData("2e Ét.", 2, null, false)]
    [InlineData("secondo stato di quattro", 2, 4, false)]
    [InlineData("segundo estado de tres", 2, 3, false)]
    [InlineData("dritter Zustand von vier", 3, 4, false)]
    public void States_are_read(string text, int? state, int? of, bool isRoman)
    {
        var read = EditionStatementReader.Read(text);

        Assert.Equal((StatementKind.State, state, of, isRoman), (read.Kind, read.State, read.StateOf, read.IsRoman));
    }

    [Theory]
    [InlineData("3/20/65")]
    [InlineData("5/8 in.")]
    [InlineData("7 3/8")]
    [InlineData("p. 3/12")]
    [InlineData("scale 1/4 full size")]
    [InlineData("United States")]
    [InlineData("JOHN 7/27/30")]
    [InlineData("by T. P. Aldous in Kiel")]
    [InlineData("Harbour 10-14-59")]
    [InlineData("Aug. 30/76")]
    [InlineData("July 13th, 57 / 10")]
    [InlineData("restored (KM 6/95)")]
    [InlineData("Inventory 2009/2010")]
    [InlineData("3/1973")]
    [InlineData("17 x 11 3/4")]
    [InlineData("28 / 44 3/4")]
    [InlineData("3/4\" = 1'0\"/6192")]
    [InlineData("9 3/4 x 13 1/2 mat 16/20")]
    [InlineData("vol. 15 no. 6/35")]
    [InlineData("pp. 191-192")]
    [InlineData("page 3/12")]
    [InlineData("dealer's number 446/180")]
    [InlineData("3660/2")]
    [InlineData("F.61/149")]
    [InlineData("HC-1199-C")]
    [InlineData("Tolland, 11/7, 1852")]
    [InlineData("$45/47")]
    [InlineData("Rows numbered 1-7")]
    [InlineData("1636 / 3 / 1973")]
    [InlineData("Oakham, PA")]
    [InlineData("dishwasher-proof")]
    [InlineData("fade proof")]
    [InlineData("only known print")]
    [InlineData("Edition unknown")]
    [InlineData("C/D")]
    public void Dates_measures_pages_and_names_are_no_numbers_of_an_edition(string text)
    {
        Assert.Equal(StatementKind.None, EditionStatementReader.Read(text).Kind);
    }

    [Theory]
    [InlineData("13/12")]
    [InlineData("0/12")]
    [InlineData("S/P")]
    [InlineData("12 bis/30")]
    [InlineData("Marren 11/69")]
    [InlineData("?/100 or 135")]
    [InlineData("3rd or 4th state")]
    [InlineData("S. P. 2/5")]
    [InlineData("46/6")]
    [InlineData("\"Ostby 7/16\"")]
    [InlineData("Ostby 7/26")]
    [InlineData("6/20/37, 6/18, 2")]
    [InlineData("\"1/4\"")]
    [InlineData("1/4 flat")]
    [InlineData("moulding 3/8")]
    [InlineData("lower 1/3 of the sheet")]
    [InlineData("bracket and 1/24")]
    [InlineData("AI/ GA/ 50/ 50")]
    [InlineData("Kilner & Co. 925/1000")]
    [InlineData("N 79/506")]
    [InlineData("#2/4364")]
    [InlineData("11/12 [circled]")]
    [InlineData("1 of 3")]
    [InlineData("2 of 3 prints in a portfolio")]
    [InlineData("40")]
    [InlineData("Numbered 86")]
    [InlineData("one of two known casts")]
    [InlineData("20 of the edition have been sold")]
    [InlineData("H.C. Tolland")]
    [InlineData("3/3 Wadlow 8/20")]
    [InlineData("proof for publication?")]
    public void What_cannot_be_or_reads_in_two_ways_is_declined_with_a_reason(string text)
    {
        var read = EditionStatementReader.Read(text);

        Assert.Equal(StatementKind.Declined, read.Kind);
        Assert.EndsWith(".", read.WhyNot, StringComparison.Ordinal);
        Assert.Null(read.Number);
    }

    [Fact]
    public void Proofs_beside_the_edition_are_counted_kind_by_kind()
    {
        var read = EditionStatementReader.Read("11/99 | I-X APs, I-II PPs, 1 BAT");

        Assert.Equal((11, 99), (read.Number, read.Of));
        Assert.Equal([new StatedProofs("A/P", 10), new StatedProofs("P/P", 2), new StatedProofs("B.A.T.", 1)], read.Beside);
    }

    [Theory]
    [InlineData("X/P 2/5", "X/P", 2, 5)]
    [InlineData("x/p 2/5", "X/P", 2, 5)]
    [InlineData("2/5 X/P", "X/P", 2, 5)]
    [InlineData("Harbour, guild copy 3", "X/P", 3, null)]
    [InlineData("A/P 2/5", "A/P", 2, 5)]
    public void A_registers_own_kind_is_read_by_its_mark_and_its_name(string text, string series, int? number, int? of)
    {
        OwnWords own = new([NumberingKind.Own("guild", "X/P", "guild copy", inSize: false, inTotal: true, forSale: false)], []);

        var read = EditionStatementReader.Read(text, own);

        Assert.Equal((StatementKind.Proof, series, number, of), (read.Kind, read.Series, read.Number, read.Of));
    }

    [Fact]
    public void An_own_mark_is_no_part_of_a_longer_word()
    {
        OwnWords own = new([NumberingKind.Own("land", "Lan", "land copy", inSize: false, inTotal: true, forSale: false)], []);

        Assert.Equal(StatementKind.Numbered, EditionStatementReader.Read("Landing 2/5", own).Kind);
    }

    [Theory]
    [InlineData("l.l. in pencil: 3/12 Harbour", "l.l. in pencil|Harbour")]
    [InlineData("Linocut (Ed. 1/6 + 1 AP)", "Linocut")]
    [InlineData("A/P, Harbour, second state", "Harbour")]
    [InlineData("3/12", "")]
    [InlineData("Harbour", "Harbour")]
    public void What_was_not_read_is_left_in_pieces(string text, string left)
    {
        Assert.Equal(left, string.Join('|', EditionStatementReader.Read(text).Left));
    }

    [Fact]
    public void The_span_says_where_it_was_read()
    {
        const string Text = "l.l. in pencil: 3/12 Harbour";

        Assert.Equal("3/12", Text[EditionStatementReader.Read(Text).Span]);
    }
}

public sealed class EditionStatementReaderInGermanTests() : EditionStatementReaderTests("de-DE");

public sealed class EditionStatementReaderInTurkishTests() : EditionStatementReaderTests("tr-TR");
