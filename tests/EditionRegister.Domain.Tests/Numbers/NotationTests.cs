using CsCheck;
using EditionRegister.Domain.Numbers;

namespace EditionRegister.Domain.Tests.Numbers;

public class NotationTests(string culture = "") : InCulture(culture)
{
    // Roman numerals: common practice, no source. Letters: the columns of a spreadsheet (XFD is the 16,384th and last column of Excel).
    [Theory]
    [InlineData("arabic", 7, "7")]
    [InlineData("arabic", 12345, "12345")]
    [InlineData("roman", 1, "I")]
    [InlineData("roman", 4, "IV")]
    [InlineData("roman", 9, "IX")]
    [InlineData("roman", 40, "XL")]
    [InlineData("roman", 1994, "MCMXCIV")]
    [InlineData("roman", 3888, "MMMDCCCLXXXVIII")]
    [InlineData("roman", 3999, "MMMCMXCIX")]
    [InlineData("letters", 1, "A")]
    [InlineData("letters", 26, "Z")]
    [InlineData("letters", 27, "AA")]
    [InlineData("letters", 52, "AZ")]
    [InlineData("letters", 53, "BA")]
    [InlineData("letters", 702, "ZZ")]
    [InlineData("letters", 703, "AAA")]
    [InlineData("letters", 16384, "XFD")]
    public void A_number_is_written_in_its_notation_and_read_back(string word, int number, string written)
    {
        Assert.True(Notation.TryFind(word, out var notation));

        Assert.Equal(written, notation.Write(number));
        Assert.True(notation.TryRead(written, out var read));
        Assert.Equal(number, read);
    }

    [Fact]
    public void Every_number_a_notation_can_write_is_read_back()
    {
        foreach (var notation in new[] { Notation.Roman, Notation.Letters })
        {
            var lost = Enumerable.Range(1, notation.Largest).Where(n => !notation.TryRead(notation.Write(n), out var read) || read != n);

            Assert.Empty(lost);
        }

        Gen.Int[1, Notation.Arabic.Largest].Sample(n => Notation.Arabic.TryRead(Notation.Arabic.Write(n), out var read) && read == n);
    }

    [Theory]
    [InlineData("roman", "xiv", 14)]
    [InlineData("letters", "c", 3)]
    [InlineData("arabic", "012", 12)]
    public void Small_letters_and_leading_zeros_are_read(string word, string text, int number)
    {
        Assert.True(Notation.TryFind(word, out var notation));

        Assert.True(notation.TryRead(text, out var read));
        Assert.Equal(number, read);
    }

    [Theory]
    [InlineData("arabic", "0")]
    [InlineData("arabic", "-1")]
    [InlineData("arabic", "+1")]
    [InlineData("arabic", "1.5")]
    [InlineData("arabic", "1,000")]
    [InlineData("arabic", "1000000")]
    [InlineData("arabic", "99999999999999999999")]
    [InlineData("arabic", "٣")]
    [InlineData("roman", "IIII")]
    [InlineData("roman", "IC")]
    [InlineData("roman", "Iv")]
    [InlineData("roman", "MMMM")]
    [InlineData("roman", "Ⅳ")]
    [InlineData("roman", "x\u0131v")]
    [InlineData("letters", "AAAA")]
    [InlineData("letters", "Ä")]
    [InlineData("letters", "A1")]
    [InlineData("none", "1")]
    [InlineData("none", "")]
    [InlineData("arabic", "")]
    [InlineData("roman", "")]
    [InlineData("letters", null)]
    public void What_a_notation_would_not_write_is_not_read(string word, string? text)
    {
        Assert.True(Notation.TryFind(word, out var notation));

        Assert.False(notation.TryRead(text, out _));
    }

    [Fact]
    public void No_notation_writes_nothing_where_there_are_no_numbers()
    {
        Assert.Equal("", Notation.None.Write(3));
    }

    [Fact]
    public void A_number_the_notation_cannot_write_is_our_mistake()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Notation.Roman.Write(4_000));
        Assert.Throws<ArgumentOutOfRangeException>(() => Notation.Arabic.Write(0));
    }

    [Fact]
    public void The_words_are_permanent()
    {
        Assert.Equal(["arabic", "roman", "letters", "none"], Notation.All.Select(notation => notation.Word));
        Assert.False(Notation.TryFind("greek", out _));
        Assert.False(Notation.TryFind(null, out _));
    }
}

public sealed class NotationInGermanTests() : NotationTests("de-DE");

public sealed class NotationInTurkishTests() : NotationTests("tr-TR");
