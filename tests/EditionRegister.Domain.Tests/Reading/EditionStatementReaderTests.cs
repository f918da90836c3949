using EditionRegister.Domain.Reading.Inscriptions;

namespace EditionRegister.Domain.Tests.Reading;

/// <summary>Pencilled numbers and cataloguers' sentences. Marks as glossaries of the trade give them; the sentences are in their manner, invented.</summary>
public sealed class EditionStatementReaderTests
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
    public void Number_size_and_kind_are_read_in_five_languages(string text, StatementKind kind, string series, int? number, int? of)
    {
        var read = EditionStatementReader.Read(text);

        Assert.Equal((kind, series, number, of), (read.Kind, read.Series, read.Number, read.Of));
    }

    [Theory]
    [InlineData("32/at least 49", SizeHedge.AtLeast, 49)]
    [InlineData("9/possibly 45", SizeHedge.About, 45)]
    [InlineData("5/c. 20", SizeHedge.About, 20)]
    [InlineData("/75?", SizeHedge.About, 75)]
    public void A_hedged_size_says_how_it_is_hedged(string text, SizeHedge hedge, int of)
    {
        var read = EditionStatementReader.Read(text);

        Assert.Equal((hedge, of), (read.Hedge, read.Of));
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
    public void States_are_read(string text, int state, int? of, bool isRoman)
    {
        var read = EditionStatementReader.Read(text);

        Assert.Equal((StatementKind.State, (int?)state, of, isRoman), (read.Kind, read.State, read.StateOf, read.IsRoman));
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
    [InlineData("3/12")]
    [InlineData("A.P. II/V, second state of three")]
    [InlineData("edition of at least 49 plus 10 artist's proofs")]
    [InlineData("N of edition of 16")]
    [InlineData("?/unlimited")]
    [InlineData("less than 100")]
    [InlineData("AP/160")]
    [InlineData("H.C. C")]
    public void What_is_written_reads_as_the_same_again(string text)
    {
        var read = EditionStatementReader.Read(text);

        var again = EditionStatementReader.Read(read.Write());

        Assert.NotEqual("", read.Write());
        Assert.Equal(
            (read.Kind, read.Series, read.Number, read.Of, read.Letter, read.Hedge, read.State, read.StateOf, read.IsRoman),
            (again.Kind, again.Series, again.Number, again.Of, again.Letter, again.Hedge, again.State, again.StateOf, again.IsRoman));
        Assert.Equal(read.Beside, again.Beside);
    }

    [Fact]
    public void The_span_says_where_it_was_read()
    {
        const string Text = "l.l. in pencil: 3/12 Harbour";

        Assert.Equal("3/12", Text[EditionStatementReader.Read(Text).Span]);
    }
}
