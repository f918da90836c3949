using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Numbers;

namespace EditionRegister.Domain.Tests.Numbers;

public class NumberRangesTests(string culture = "") : InCulture(culture)
{
    [Theory]
    [InlineData("3-7", "arabic 3 7")]
    [InlineData("9", "arabic 9 9")]
    [InlineData("3/12", "arabic 3 3 12")]
    [InlineData("1965", "arabic 1965 1965")]
    [InlineData("3 – 7", "arabic 3 7")]
    [InlineData("A/P I-III", "artists-proof roman 1 3")]
    [InlineData("ap i-iii", "artists-proof roman 1 3")]
    [InlineData("1-5 A/P", "artists-proof arabic 1 5")]
    [InlineData("A/P 2", "artists-proof arabic 2 2")]
    [InlineData("I-X", "roman 1 10")]
    [InlineData("I-L", "roman 1 50")]
    [InlineData("H.C. A-F", "hors-commerce letters 1 6")]
    [InlineData("H.C. C-D", "hors-commerce letters 3 4")]
    [InlineData("A-I", "letters 1 9")]
    [InlineData("C-X", "letters 3 24")]
    [InlineData("V-X", "roman 5 10")]
    [InlineData("B.A.T.", "bon-a-tirer none")]
    [InlineData("7KQ4-M2X3", "code 7KQ4M2X3")]
    [InlineData("7kq4m2x3", "code 7KQ4M2X3")]
    [InlineData("state proof 1-3", "state arabic 1 3")]
    [InlineData("1-9999", "arabic 1 9999")]
    public void A_part_is_read(string text, string meaning)
    {
        var range = Assert.Single(NumberRanges.Read(text));

        Assert.Equal(meaning, Meaning(range));
        Assert.Equal(range, Assert.Single(NumberRanges.Read(range.ToString())));
    }

    [Fact]
    public void The_form_shown_is_read_in_the_order_written_and_spelled_the_same()
    {
        var ranges = NumberRanges.Read(NumberRanges.Form);

        Assert.Equal(["arabic 3 7", "arabic 9 9", "artists-proof roman 1 3", "code 7KQ4M2X3"], ranges.Select(Meaning));
        Assert.Equal(NumberRanges.Form, string.Join(", ", ranges));
    }

    [Fact]
    public void A_mark_holds_for_its_own_part_only()
    {
        var ranges = NumberRanges.Read("A/P I-III,5");

        Assert.Equal(["artists-proof roman 1 3", "arabic 5 5"], ranges.Select(Meaning));
    }

    [Theory]
    [InlineData(null, "ranges-empty", "No impressions were named, so none were chosen. Write them like 3-7, 9, A/P I-III, 7KQ4-M2X3.")]
    [InlineData("  ", "ranges-empty", "No impressions were named, so none were chosen. Write them like 3-7, 9, A/P I-III, 7KQ4-M2X3.")]
    [InlineData("3-7,", "range-part-empty", "“3-7,” has a comma with nothing beside it, so no impressions were chosen. Take the comma away or write what is missing.")]
    [InlineData("3, 7-3, 9", "range-reversed", "“7-3” ends before it begins, so no impressions were chosen. Write the lower number first.")]
    [InlineData("A/P V-II", "range-reversed", "“A/P V-II” ends before it begins, so no impressions were chosen. Write the lower number first.")]
    [InlineData("3, 1-10000", "range-too-long", "“1-10000” names more than 9,999 numbers, so no impressions were chosen. Split it, or look for a digit too many.")]
    [InlineData("0", "range-impossible", "“0” is a number no sheet can bear, so no impressions were chosen. Numbers begin at 1 and end at the size of the edition.")]
    [InlineData("13/12", "range-impossible", "“13/12” is a number no sheet can bear, so no impressions were chosen. Numbers begin at 1 and end at the size of the edition.")]
    [InlineData("3, 4-x", "range-unreadable", "“4-x” is no number, range of numbers or register code, so no impressions were chosen. Write it like 3-7, 9, A/P I-III, 7KQ4-M2X3; in a code, look for a mistyped character.")]
    [InlineData("\u001B[2J", "range-unreadable", "“␛[2J” is no number, range of numbers or register code, so no impressions were chosen. Write it like 3-7, 9, A/P I-III, 7KQ4-M2X3; in a code, look for a mistyped character.")]
    [InlineData("7KQ4-M2X4", "range-unreadable", "“7KQ4-M2X4” is no number, range of numbers or register code, so no impressions were chosen. Write it like 3-7, 9, A/P I-III, 7KQ4-M2X3; in a code, look for a mistyped character.")]
    public void A_part_that_cannot_be_followed_is_named(string? text, string name, string sentence)
    {
        var refused = Assert.Throws<RefusedException>(() => NumberRanges.Read(text));

        Assert.Equal(name, refused.Name);
        Assert.Equal(sentence, refused.Message);
    }

    [Theory]
    [InlineData("1-2-3")]
    [InlineData("-3")]
    [InlineData("3-")]
    [InlineData("0-3")]
    [InlineData("3-V")]
    [InlineData("3-7/12")]
    [InlineData("Harbour")]
    [InlineData("all")]
    [InlineData("3;4")]
    [InlineData("3/20/65")]
    public void What_is_not_plain_is_refused_and_not_guessed_at(string text)
    {
        var refused = Assert.Throws<RefusedException>(() => NumberRanges.Read(text));

        Assert.Equal("range-unreadable", refused.Name);
    }

    [Fact]
    public void A_range_that_is_also_a_code_is_refused_with_both_ways_out()
    {
        var part = Enumerable.Range(6_789, 200).Select(last => $"2345-{last}").First(text => RegisterCode.TryParse(text, out _));

        var refused = Assert.Throws<RefusedException>(() => NumberRanges.Read(part));

        Assert.Equal("range-or-code", refused.Name);
        Assert.Equal(
            $"“{part}” can be a range of numbers and a register code, so no impressions were chosen. For the code write {part.Replace("-", "", StringComparison.Ordinal)}; for the range write its first number, a comma, and the rest.",
            refused.Message);
        Assert.NotNull(Assert.Single(NumberRanges.Read(part.Replace("-", "", StringComparison.Ordinal))).Code);
    }

    private static string Meaning(NumberRange range) => range.Code is { } code
        ? $"code {code.Text}"
        : string.Join(' ', new object?[] { range.Kind, range.Notation, range.From, range.To, range.Of }.Where(part => part is not null));
}

public sealed class NumberRangesInGermanTests() : NumberRangesTests("de-DE");

public sealed class NumberRangesInTurkishTests() : NumberRangesTests("tr-TR");
