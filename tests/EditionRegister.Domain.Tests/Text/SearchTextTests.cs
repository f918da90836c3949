using CsCheck;
using EditionRegister.Domain.Text;

namespace EditionRegister.Domain.Tests.Text;

public class SearchTextTests(string culture = "") : InCulture(culture)
{
    [Theory]
    [InlineData("Harbour", "HARBOUR")]
    [InlineData("  Harbour \t at\u00A0night\r\n", "HARBOUR AT NIGHT")]
    [InlineData("Élodie", "ELODIE")]
    [InlineData("E\u0301lodie", "ELODIE")]
    [InlineData("Straße", "STRASSE")]
    [InlineData("STRAẞE", "STRASSE")]
    [InlineData("Øre", "ORE")]
    [InlineData("ǿre", "ORE")]
    [InlineData("Łódź", "LODZ")]
    [InlineData("Ærø", "AERO")]
    [InlineData("œuvre", "OEUVRE")]
    [InlineData("Đại", "DAI")]
    [InlineData("đ", "D")]
    [InlineData("istanbul", "ISTANBUL")]
    [InlineData("İstanbul", "ISTANBUL")]
    [InlineData("ılık", "ILIK")]
    [InlineData("Irmak", "IRMAK")]
    [InlineData("ﬁne", "FINE")]
    [InlineData("Ｈａｒｂｏｕｒ", "HARBOUR")]
    [InlineData("ὀδός", "ΟΔΟΣ")]
    [InlineData("ёлка", "ЕЛКА")]
    [InlineData("が", "が")]
    [InlineData("か\u3099", "が")]
    [InlineData("김누리", "김누리")]
    [InlineData("ที่", "ที่")]
    [InlineData("", "")]
    [InlineData("   ", "")]
    public void Case_accents_and_white_space_make_no_difference(string text, string folded)
    {
        Assert.Equal(folded, SearchText.Fold(text));
    }

    [Fact]
    public void A_damaged_text_is_searched_all_the_same()
    {
        Assert.Equal("HARBOUR\uFFFD", SearchText.Fold("Harbour\uD800"));
    }

    [Fact]
    public void Folding_again_changes_nothing()
    {
        Gen.String.Sample(text => SearchText.Fold(SearchText.Fold(text)) == SearchText.Fold(text), iter: 5_000);
    }

    // Without the combining iota below, an accent whose capital is a letter.
    [Fact]
    public void Every_letter_of_the_alphabets_is_found_by_its_capital_and_its_composed_form()
    {
        var lost = Enumerable.Range(0x20, 0x2FFF).Where(c => c != 0x345).Select(c => ((char)c).ToString())
            .Where(c => SearchText.Fold(c) != SearchText.Fold(c.Normalize(System.Text.NormalizationForm.FormD))
                || SearchText.Fold(c) != SearchText.Fold(c.ToUpperInvariant())
                || SearchText.Fold(SearchText.Fold(c)) != SearchText.Fold(c));

        Assert.Equal([], lost);
    }
}

public sealed class SearchTextInGermanTests() : SearchTextTests("de-DE");

public sealed class SearchTextInTurkishTests() : SearchTextTests("tr-TR");
