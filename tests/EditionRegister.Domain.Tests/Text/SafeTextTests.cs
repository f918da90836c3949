using System.Globalization;
using System.Text;
using CsCheck;
using EditionRegister.Domain.Text;

namespace EditionRegister.Domain.Tests.Text;

public class SafeTextTests(string culture = "") : InCulture(culture)
{
    [Theory]
    [InlineData("Harbour – Älv, 山川", "Harbour – Älv, 山川")]
    [InlineData("\u001B[31mred\u001B[0m", "␛[31mred␛[0m")]
    [InlineData("\u001B]0;title\u0007", "␛]0;title␇")]
    [InlineData("one\r\ntwo\tthree", "one␍␊two␉three")]
    [InlineData("\0\u007F", "␀␡")]
    [InlineData("\u009B31m", @"\u{9B}31m")]
    [InlineData("\u0085", @"\u{85}")]
    [InlineData("price\u202E05.081", @"price\u{202E}05.081")]
    [InlineData("\u2066a\u2069\u200F", @"\u{2066}a\u{2069}\u{200F}")]
    [InlineData("Har\u200Bbour\uFEFF", @"Har\u{200B}bour\u{FEFF}")]
    [InlineData("\u2028\u2029", @"\u{2028}\u{2029}")]
    [InlineData("\U000E0041", @"\u{E0041}")]
    [InlineData("می\u200Cروم", "می\u200Cروم")]
    [InlineData("👩\u200D🎨", "👩\u200D🎨")]
    [InlineData("", "")]
    public void What_would_command_hide_or_reorder_is_made_visible(string text, string shown)
    {
        Assert.Equal(shown, SafeText.Show(text));
    }

    [Fact]
    public void A_half_of_a_character_is_named()
    {
        Assert.Equal(@"a\u{D800}b\u{DC00}", SafeText.Show("a\uD800b\uDC00"));
    }

    [Fact]
    public void Nothing_a_terminal_obeys_is_left_in_any_text()
    {
        Gen.String.Sample(text => SafeText.Show(text).EnumerateRunes().All(rune =>
            rune.Value is 0x200C or 0x200D
            || Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate)), iter: 5_000);
        Assert.All(Enumerable.Range(0, 0x100).Select(c => SafeText.Show(((char)c).ToString())), shown => Assert.DoesNotContain(shown, char.IsControl));
    }
}

public sealed class SafeTextInGermanTests() : SafeTextTests("de-DE");

public sealed class SafeTextInTurkishTests() : SafeTextTests("tr-TR");
