using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class InscriptionsAgreeWithRecordTests
{
    private const string Rule = "InscriptionsAgreeWithRecord";

    private static readonly Work Clean = Harbour.Clean();
    private readonly string _seven = Clean.The("7/12").ShownCode;

    [Theory]
    [InlineData("Exemplar 8/12", "number 8 of an edition of 12", "number differs")]
    [InlineData("Exemplar 7/15", "number 7 of an edition of 15", "size differs")]
    [InlineData("Épreuve d'artiste", "artist's proof", "kind differs")]
    [InlineData("working proof", "working proof", "kind differs")]
    [InlineData("Épreuve d'artiste 2/5", "artist's proof 2 of 5", "kind, number and size differ")]
    public void An_inscription_names_another_number(string text, string read, string difference)
    {
        Assert.Equal([$"Query: “{text}” stands on {_seven} and reads as {read}, and the register has 7/12 of “Harbour”: {difference}."], FindingsOf.Rule(Rule, With("7/12", text)));
    }

    [Theory]
    [InlineData("7/12", "Exemplar 7/12")]
    [InlineData("7/12", "Ex. no. 7")]
    [InlineData("7/12", "7/at least 10")]
    [InlineData("A/P II/II", "Künstlerabzug")]
    [InlineData("A/P II/II", "prova d'artista II/II")]
    [InlineData("A/P II/II", "working proof")]
    public void An_inscription_may_say_less_or_the_same(string number, string text)
    {
        Assert.Empty(FindingsOf.Rule(Rule, With(number, text)));
    }

    // Invented, in the manner of what people write below and behind prints.
    [Theory]
    [InlineData("Für Anna zum 12. 5. 1998, herzlich")]
    [InlineData("À mon ami Jean, Paris 3/4/98")]
    [InlineData("Pour Lucie, la deuxième planche de la série")]
    [InlineData("Per Giulia, con affetto, 1.2.2003")]
    [InlineData("Para Inés, con todo cariño")]
    [InlineData("Zum Geburtstag, 5/8")]
    [InlineData("S/P 3/10")]
    [InlineData("Hahnemühle 300 g, 1/2 Bogen")]
    [InlineData("A. Brandt del., B. Okker sc.")]
    public void Dedications_notes_and_what_is_declined_say_nothing(string text)
    {
        Assert.Empty(FindingsOf.Rule(Rule, With("7/12", text)));
    }

    [Fact]
    public void A_sheet_without_a_number_says_nothing()
    {
        Assert.Empty(FindingsOf.Rule(Rule, With("spare", "Exemplar 8/12")));
        Assert.Empty(FindingsOf.Rule(Rule, With("7/12", "Exemplar 8/12").WithSheet("7/12", sheet => sheet with { Numbering = null, Number = null })));
    }

    [Fact]
    public void What_the_pencil_says_too_is_told_by_the_pencils_own_rule()
    {
        var work = With("7/12", "Exemplar 8/12").WithSheet("7/12", sheet => sheet with { Pencilled = "8/12" });

        Assert.Empty(FindingsOf.Rule(Rule, work));
        Assert.Equal([$"Contradiction: 8/12 is pencilled on {_seven}, and the register has 7/12 of “Harbour”: number differs."], FindingsOf.Rule("PencilAgreesWithRecord", work));
    }

    [Fact]
    public void What_was_read_when_it_was_written_down_counts()
    {
        var work = Clean.WithSheet("7/12", sheet => sheet with { Inscriptions = [new Inscription(1, 1, "back", "written", null, "no. 8 of twelve") { Says = new SaidOfNumber("numbered") { Series = "edition", Number = 8, Size = 12, Notation = "arabic" } }] });

        Assert.Equal([$"Query: “no. 8 of twelve” stands on {_seven} and reads as number 8 of an edition of 12, and the register has 7/12 of “Harbour”: number differs."], FindingsOf.Rule(Rule, work));
    }

    private static Work With(string number, string text) =>
        Clean.WithSheet(number, sheet => sheet with { Inscriptions = [new Inscription(1, 1, "back", "written", null, text)] });
}
