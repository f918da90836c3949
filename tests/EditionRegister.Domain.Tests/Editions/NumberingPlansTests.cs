using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Editions;

/// <summary>Editions in words, invented in the manner of catalogues. That proofs are counted in roman numerals is common practice (imoga.org, a workshop's glossary).</summary>
public sealed class NumberingPlansTests
{
    [Theory]
    [InlineData("1-12", "1-12")]
    [InlineData("deluxe: I-X", "deluxe: I-X")]
    [InlineData("open", "open")]
    [InlineData("1-12, A/P I-II, B.A.T.", "1-12; A/P I-II; B.A.T.")]
    public void Numberings_written_out_are_taken_as_they_are(string text, string plans)
    {
        var read = NumberingPlans.Read(text, OwnWords.None);

        Assert.Equal((plans, null), (Told(read), read.Statement));
    }

    [Theory]
    [InlineData("edition of 75", "1-75")]
    [InlineData("edition of 75 plus 10 artist's proofs", "1-75; A/P I-X")]
    [InlineData("75 plus 10 A/P", "1-75; A/P I-X")]
    [InlineData("edition of 75 + X AP", "1-75; A/P I-X")]
    [InlineData("tirage à 30 exemplaires", "1-30")]
    [InlineData("Auflage 40", "1-40")]
    [InlineData("I-X APs, I-II PPs, 1 BAT", "A/P I-X; P/P I-II; B.A.T.")]
    [InlineData("edition of 75, 1-10 APs", "1-75; A/P 1-10")]
    [InlineData("edition of 75, A-C H.C.", "1-75; H.C. A-C")]
    [InlineData("edition of 75, H.C. A-C, 2 printer's proofs", "1-75; P/P I-II; H.C. A-C")]
    [InlineData("an edition of 30 with five artist's proofs and one bon à tirer", "1-30; A/P I-V; B.A.T.")]
    [InlineData("open edition", "open")]
    [InlineData("unlimited edition", "open")]
    [InlineData("unique impression", "1-1")]
    [InlineData("edition of at least 49", "edition of at least 49")]
    [InlineData("c. 50", "edition of about 50")]
    [InlineData("less than 100", "edition of at most 99")]
    public void An_edition_in_words_becomes_numberings_and_the_words_are_kept(string text, string plans)
    {
        var read = NumberingPlans.Read(text, OwnWords.None);

        Assert.Equal((plans, text), (Told(read), read.Statement));
    }

    [Theory]
    [InlineData("1-4, 6", "numbering-not-read")]
    [InlineData("Harbour", "numbering-not-read")]
    [InlineData("", "numbering-not-read")]
    [InlineData(",", "numbering-not-read")]
    [InlineData("3/75", "numbering-from-one")]
    [InlineData("2-12", "numbering-from-one")]
    [InlineData("Exemplar 3/40", "edition-words-not-read")]
    [InlineData("S/P", "edition-words-not-read")]
    [InlineData("edition of 75 plus 3 working proofs", "edition-words-not-read")]
    [InlineData("edition of 75, 200 in all", "edition-words-not-read")]
    [InlineData("unnumbered", "edition-words-not-read")]
    [InlineData("edition of 75 or 80", "edition-words-not-read")]
    public void What_cannot_all_be_read_is_refused(string text, string name)
    {
        Assert.Equal(name, Assert.Throws<RefusedException>(() => NumberingPlans.Read(text, OwnWords.None)).Name);
    }

    private static string Told(NumberingPlans plans) => string.Join("; ", plans.Plans.Select(plan => plan.ToString()));
}
