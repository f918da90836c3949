using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Reading;

public sealed class StatementInWordsTests
{
    [Theory]
    [InlineData("3/12", "number 3 of an edition of 12")]
    [InlineData("IV/X", "number IV of an edition of X")]
    [InlineData("Épreuve d'artiste 2/5", "artist's proof 2 of 5")]
    [InlineData("A/P II/V", "artist's proof II of V")]
    [InlineData("A/P", "artist's proof")]
    [InlineData("A/P C", "artist's proof C")]
    [InlineData("AP/160", "artist's proof beside an edition of 160")]
    [InlineData("A/P 3, edition of 75", "artist's proof 3 beside an edition of 75")]
    [InlineData("edition of 75 plus 10 artist's proofs", "an edition of 75, and beside it 10 artist's proofs")]
    [InlineData("edition of 75 plus 10 artist's proofs, 2 printer's proofs and 1 BAT", "an edition of 75, and beside it 10 artist's proofs, 2 printer's proofs and 1 bon à tirer")]
    [InlineData("I-X APs, I-II PPs, 1 BAT", "an edition, and beside it 10 artist's proofs, 2 printer's proofs and 1 bon à tirer")]
    [InlineData("tirage à 30 exemplaires", "an edition of 30")]
    [InlineData("32/at least 49", "number 32 of at least 49")]
    [InlineData("edition of c. 50", "an edition of about 50")]
    [InlineData("edition of between 75 and 100", "an edition of between 75 and 100")]
    [InlineData("edition of less than 100", "an edition of at most 99")]
    [InlineData("second state of three", "second state of three")]
    [InlineData("state III", "third state")]
    [InlineData("Twenty-ninth state", "state 29")]
    [InlineData("final state", "final state")]
    [InlineData("A/P 2/5, second state", "artist's proof 2 of 5, second state")]
    [InlineData("copy C", "copy C of the edition")]
    [InlineData("edition no. 7", "number 7 of the edition")]
    [InlineData("3(?)/25", "number 3, not sure, of an edition of 25")]
    [InlineData("unlimited", "open, or without numbers")]
    [InlineData("5/unlimited", "number 5 of an open edition")]
    [InlineData("?/unlimited", "an open edition")]
    [InlineData("unnumbered", "open, or without numbers")]
    [InlineData("W/P 2", "working proof 2")]
    [InlineData("artist's proofs", "artist's proof")]
    [InlineData("Exemplar 3/40", "number 3 of an edition of 40")]
    [InlineData("S/P 3/10", "not read: S/P means a state proof to one workshop and a special proof to another")]
    [InlineData("3/12, 4/12", "not read: more than one number stands there, and none is marked as the copy's")]
    [InlineData("Exemplar 13/12", "not read: a sheet cannot have a number above its edition's size, or none")]
    [InlineData("Harbour at Low Water", "")]
    [InlineData("75 plus 10 A/P", "an edition, and beside it 10 artist's proofs")]
    [InlineData("edition of 75 + X AP", "an edition of 75, and beside it 10 artist's proofs")]
    [InlineData("H.C. 2/5, 3rd state of 4", "hors commerce 2 of 5, third state of four")]
    public void What_was_read_is_told_in_short_plain_words(string text, string words)
    {
        Assert.Equal(words, EditionStatementReader.Read(text).InWords());
    }

    [Fact]
    public void A_kind_of_the_registers_own_is_told_by_its_name()
    {
        OwnWords own = new([NumberingKind.Own("laid-proof", "L.P.", "proof on laid paper", inSize: false, inTotal: true, forSale: true)], []);

        Assert.Equal("proof on laid paper 2 of 3", EditionStatementReader.Read("L.P. 2/3", own).InWords(own));
    }

    [Theory]
    [InlineData("Épreuve d'artiste 2/5", "artist's proof 2 of 5")]
    [InlineData("A/P II/V, second state of three", "artist's proof II of V, second state of three")]
    [InlineData("32/at least 49", "number 32 of at least 49")]
    [InlineData("edition of less than 100", "an edition of at most 99")]
    [InlineData("copy C", "copy C of the edition")]
    [InlineData("AP/160", "artist's proof beside an edition of 160")]
    [InlineData("A/P 3, edition of 75", "artist's proof 3")]
    [InlineData("3(?)/25", "a number that is not sure, of an edition of 25")]
    [InlineData("5/unlimited", "number 5 of an open edition")]
    [InlineData("S/P 3/10", "not read")]
    public void What_is_stored_is_told_in_the_same_words_as_far_as_it_is_stored(string text, string words)
    {
        Assert.Equal(words, SaidOfNumber.Of(EditionStatementReader.Read(text))!.AsStatement().InWords());
    }

    [Fact]
    public void Every_kind_has_a_series_that_is_read_as_that_kind()
    {
        Assert.All(NumberingKind.All, kind => Assert.Equal(kind, SheetReader.KindOf(SheetReader.SeriesOf(kind), OwnWords.None)));
    }
}
