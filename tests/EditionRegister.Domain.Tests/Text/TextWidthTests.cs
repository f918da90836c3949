using System.Globalization;
using System.Text;
using EditionRegister.Domain.Text;

namespace EditionRegister.Domain.Tests.Text;

public sealed class TextWidthTests
{
    [Theory]
    [InlineData("", 0)]
    [InlineData("Harbour", 7)]
    [InlineData("Élodie", 6)]
    [InlineData("E\u0301lodie", 6)]
    [InlineData("山川花緒", 8)]
    [InlineData("김누리", 6)]
    [InlineData("\u1100\u1161\u11A8", 2)]
    [InlineData("Ｈａ", 4)]
    [InlineData("ｶﾅ", 2)]
    [InlineData("⚓", 2)]
    [InlineData("𠀀", 2)]
    [InlineData("␛", 1)]
    [InlineData("a\u200Db", 2)]
    public void A_text_is_as_wide_as_the_columns_it_takes(string text, int columns)
    {
        Assert.Equal(columns, TextWidth.Of(text));
    }

    // Source: Unicode Standard Annex #11, EastAsianWidth.txt of Unicode 14.0 (data/README.md).
    [Fact]
    public void Every_character_the_standard_calls_wide_takes_two_columns()
    {
        var wide = Wide().Where(IsBase).ToList();

        Assert.DoesNotContain(wide, c => TextWidth.Of(char.ConvertFromUtf32(c)) != 2);
        Assert.True(wide.Count > 110_000, $"Only {wide.Count} characters were compared.");
    }

    // Characters newer than the data may be wide already: the annex calls the ideographic blocks and their gaps wide beforehand.
    [Fact]
    public void No_character_of_everyday_scripts_takes_two_columns_against_the_standard()
    {
        var wide = Wide().ToHashSet();

        var wrong = Enumerable.Range(0x20, 0x2E80 - 0x20).Where(c => !wide.Contains(c) && TextWidth.Of(((char)c).ToString()) > 1);

        Assert.Empty(wrong);
    }

    [Theory]
    [InlineData("山川", 6, "山川  ")]
    [InlineData("E\u0301", 3, "E\u0301  ")]
    [InlineData("Harbour", 3, "Harbour")]
    [InlineData("", 0, "")]
    public void A_column_is_filled_up_with_spaces(string text, int columns, string padded)
    {
        Assert.Equal(padded, TextWidth.Pad(text, columns));
    }

    [Theory]
    [InlineData("Harbour", 7, "Harbour")]
    [InlineData("Harbour", 6, "Harbo…")]
    [InlineData("Harbour", 1, "…")]
    [InlineData("Harbour", 0, "")]
    [InlineData("山川花緒", 6, "山川…")]
    [InlineData("山川花緒", 5, "山川…")]
    [InlineData("山川花緒", 2, "…")]
    [InlineData("E\u0301lodie", 3, "E\u0301l…")]
    [InlineData("lode\u0301", 4, "lode\u0301")]
    public void A_text_too_wide_is_cut_and_says_so(string text, int columns, string cut)
    {
        Assert.Equal(cut, TextWidth.Cut(text, columns));
        Assert.True(TextWidth.Of(cut) <= columns);
    }

    private static IEnumerable<int> Wide() =>
        from line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "data", "east_asian_wide.txt"))
        let ends = line.Split("..").Select(end => int.Parse(end, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture)).ToArray()
        from codePoint in Enumerable.Range(ends[0], ends[1] - ends[0] + 1)
        select codePoint;

    private static bool IsBase(int codePoint) =>
        Rune.GetUnicodeCategory(new Rune(codePoint)) is not (UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format);
}
