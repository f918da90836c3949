using EditionRegister.Domain.Codes;

namespace EditionRegister.Domain.Tests.Codes;

public class RegisterCodeTests(string culture = "") : InCulture(culture)
{
    private readonly Random _random = new(20260301);

    [Fact]
    public void A_drawn_code_is_shown_in_two_groups_and_read_back()
    {
        var code = RegisterCode.Draw(_random.Next);

        Assert.Matches("^[2-9A-HJ-NP-Z]{8}$", code.Text);
        Assert.Equal(code.Text[..4] + "-" + code.Text[4..], code.ToString());
        Assert.True(RegisterCode.TryParse(code.ToString(), out var again));
        Assert.Equal(code, again);
    }

    [Theory]
    [InlineData("{0}-{1}")]
    [InlineData("{0}{1}")]
    [InlineData("  {0} {1} ")]
    [InlineData("{0}\u2011{1}")]
    [InlineData("{0}\u00A0-\u00A0{1}")]
    public void Case_spaces_and_hyphens_do_not_matter(string form)
    {
        var code = RegisterCode.Draw(_random.Next);

        var typed = string.Format(System.Globalization.CultureInfo.InvariantCulture, form, code.Text[..4], code.Text[4..]);

        Assert.True(RegisterCode.TryParse(typed, out var upper));
        Assert.True(RegisterCode.TryParse(typed.ToLowerInvariant(), out var lower));
        Assert.Equal(code, upper);
        Assert.Equal(code, lower);
    }

    [Fact]
    public void The_form_shown_as_an_example_is_itself_a_code()
    {
        Assert.True(RegisterCode.TryParse(RegisterCode.Form, out var code));
        Assert.Equal(RegisterCode.Form, code.ToString());
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("7KQ4-M2X")]
    [InlineData("7KQ4-M2X33")]
    [InlineData("7KQ4_M2X3")]
    [InlineData("3/12")]
    [InlineData("\u0131KQ4-M2X3")]
    public void What_is_not_a_code_is_not_read(string? text)
    {
        Assert.False(RegisterCode.TryParse(text, out var code));
        Assert.Null(code);
    }

    [Fact]
    public void A_body_whose_check_character_would_be_confused_is_drawn_again()
    {
        var confusing = FirstBody(check => "01IO".Contains(check, StringComparison.Ordinal));
        var clear = FirstBody(check => RegisterCode.Alphabet.Contains(check, StringComparison.Ordinal));
        Queue<int> draws = new((confusing + clear).Select(c => RegisterCode.Alphabet.IndexOf(c, StringComparison.Ordinal)));

        var code = RegisterCode.Draw(_ => draws.Dequeue());

        Assert.Equal(clear, code.Text[..7]);
        Assert.Empty(draws);
    }

    [Fact]
    public void The_draw_asks_for_as_many_numbers_as_there_are_characters_and_uses_each()
    {
        HashSet<int> asked = [];
        HashSet<char> seen = [];

        for (var i = 0; i < 1_000; i++)
        {
            seen.UnionWith(RegisterCode.Draw(n => { asked.Add(n); return _random.Next(n); }).Text);
        }

        Assert.Equal([32], asked);
        Assert.Equal(RegisterCode.Alphabet, string.Concat(seen.Order()));
    }

    private static string FirstBody(Func<char, bool> wanted) =>
        (from a in RegisterCode.Alphabet
         from b in RegisterCode.Alphabet
         let body = $"ABCDE{a}{b}"
         where wanted(Iso7064Mod37And36.CheckCharacter(body))
         select body).First();
}

public sealed class RegisterCodeInGermanTests() : RegisterCodeTests("de-DE");

public sealed class RegisterCodeInTurkishTests() : RegisterCodeTests("tr-TR");
