using EditionRegister.Domain.Codes;

namespace EditionRegister.Domain.Tests.Codes;

public class Iso7064Mod37And36Tests(string culture = "") : InCulture(culture)
{
    // Source: python-stdnum, stdnum/iso7064/mod_37_36.py at commit 006192e5 (its authors: from secondary sources, not the standard's own text).
    [Fact]
    public void The_published_example_has_its_published_check_character()
    {
        Assert.Equal('M', Iso7064Mod37And36.CheckCharacter("A12425GABC1234002"));
        Assert.True(Iso7064Mod37And36.IsValid("A12425GABC1234002M"));
    }

    [Fact]
    public void No_other_character_behind_the_published_example_is_valid()
    {
        var accepted = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ".Where(c => Iso7064Mod37And36.IsValid("A12425GABC1234002" + c));

        Assert.Equal("M", string.Concat(accepted));
    }

    [Theory]
    [InlineData("")]
    [InlineData("M")]
    [InlineData("a12425gabc1234002m")]
    [InlineData("A12425GABC1234002M ")]
    [InlineData("A12425GABC1234002\u0130")]
    public void Anything_but_digits_and_capital_letters_is_not_valid(string text)
    {
        Assert.False(Iso7064Mod37And36.IsValid(text));
    }

    [Fact]
    public void A_body_that_cannot_carry_a_check_character_is_our_mistake()
    {
        Assert.Throws<ArgumentException>(() => Iso7064Mod37And36.CheckCharacter("7KQ4-M2X"));
    }
}

public sealed class Iso7064Mod37And36InGermanTests() : Iso7064Mod37And36Tests("de-DE");

public sealed class Iso7064Mod37And36InTurkishTests() : Iso7064Mod37And36Tests("tr-TR");
