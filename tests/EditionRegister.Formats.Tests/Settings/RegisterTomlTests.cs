using CsCheck;
using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Sizes;
using EditionRegister.Formats.Settings;

namespace EditionRegister.Formats.Tests.Settings;

public sealed class RegisterTomlTests
{
    private const string Full = """
        name = "Ebb Tide Press"
        base_url = "https://example.org/prints/"
        page = "letter"
        currency = "GBP"
        units = "in"
        size_writing = "lc-mm"
        by = 2
        [printer]
        right_mm = -0.5
        down_mm = 1
        """;

    [Fact]
    public void Reads_every_key_and_drops_the_slash_at_the_end_of_the_address()
    {
        var settings = RegisterToml.Read(Full, "register.toml");

        Assert.Equal(
            new RegisterSettings
            {
                Name = "Ebb Tide Press",
                BaseUrl = "https://example.org/prints",
                Page = PageSize.Letter,
                Currency = "GBP",
                Units = "in",
                SizeWriting = SizeWriting.LcMillimetres,
                By = 2,
                PrinterOffset = new PrinterOffset(-0.5, 1),
            },
            settings);
    }

    [Fact]
    public void A_name_is_enough()
    {
        var settings = RegisterToml.Read("name = 'Atelier am Hafen'", "register.toml");

        Assert.Equal(new RegisterSettings { Name = "Atelier am Hafen" }, settings);
    }

    [Fact]
    public void Reading_what_was_written_gives_the_same_settings() =>
        Gen.Select(
            Gen.String[Gen.Char['\u0001', '\uD7FF'], 1, 12].Where(name => !string.IsNullOrWhiteSpace(name)),
            Gen.Bool,
            Gen.Double[-20, 20],
            Gen.Long[1, long.MaxValue],
            Gen.Int[0, 3])
        .Sample((name, all, offset, by, writing) =>
        {
            RegisterSettings settings = new()
            {
                Name = name,
                BaseUrl = all ? "http://127.0.0.1:8080" : null,
                Page = all ? PageSize.Letter : PageSize.A4,
                SizeWriting = SizeWriting.All[writing],
                By = all ? by : null,
                PrinterOffset = new PrinterOffset(offset, -offset),
            };

            Assert.Equal(settings, RegisterToml.Read(RegisterToml.Write(settings), "register.toml"));
        });

    [Fact]
    public void Writes_a_comment_above_each_key()
    {
        var text = RegisterToml.Write(new RegisterSettings { Name = "Ebb Tide Press" });

        Assert.Equal(
            """
            # What this register is called, on screens and lists.
            name = "Ebb Tide Press"

            # Put before /code in the links that QR codes hold. Without it no QR codes are printed.
            # base_url = "https://example.org/prints"

            # Paper for certificates and lists: "A4" or "Letter".
            page = "A4"

            # Used where a price names no currency: three capital letters of ISO 4217.
            currency = "EUR"

            # How sizes are shown on documents: "mm" or "in".
            units = "mm"

            # How sizes are written for people: "measured" (in that unit, nothing rounded), "cco" (cm with decimals, and inches to the nearest
            # quarter), "lc" (up to the next cm, and inches up to the next quarter) or "lc-mm" (nearest mm, and inches up to the next eighth).
            size_writing = "measured"

            # The id of the person who writes in this register.
            # by = 1

            # What the label printer gets wrong: labels are moved by so many millimetres.
            [printer]
            # To the right; negative moves to the left.
            right_mm = 0
            # Down; negative moves up.
            down_mm = 0

            """.ReplaceLineEndings("\n"),
            text);
    }

    [Theory]
    [InlineData("name = \"a", "toml-broken", "line 1, column 9 is not TOML (Invalid End-Of-File found on string literal). Mend that line.")]
    [InlineData("page = \"A4\"", "toml-missing-key", "name is missing (line 1 is where it is looked for). Add it.")]
    [InlineData("name = \" \"", "toml-wrong-value", "line 1, column 8 says name = \" \"; it must not be empty.")]
    [InlineData("name = 3", "toml-wrong-value", "line 1, column 8 says name = 3; it must be text in quotes.")]
    [InlineData("name = 'a'\n  paper = 'A4'", "toml-unknown-key", "line 2, column 3 has paper, which nothing reads. Take it out, or write one of these: name, base_url, page, currency, units, size_writing, by, printer.right_mm, printer.down_mm.")]
    [InlineData("name = 'a'\n[[label]]\n[[label]]", "toml-unknown-key", "line 2, column 1 has [label], which nothing reads. Take it out, or write one of these: name, base_url, page, currency, units, size_writing, by, printer.right_mm, printer.down_mm.")]
    [InlineData("name = 'a'\npage = 'A5'", "toml-wrong-value", "line 2, column 8 says page = 'A5'; it must be \"A4\" or \"Letter\".")]
    [InlineData("name = 'a'\ncurrency = 'eur'", "toml-wrong-value", "line 2, column 12 says currency = 'eur'; it must be three capital letters, such as \"EUR\".")]
    [InlineData("name = 'a'\nunits = 'cm'", "toml-wrong-value", "line 2, column 9 says units = 'cm'; it must be \"mm\" or \"in\".")]
    [InlineData("name = 'a'\nsize_writing = 'LC'", "toml-wrong-value", "line 2, column 16 says size_writing = 'LC'; it must be \"measured\", \"cco\", \"lc\" or \"lc-mm\".")]
    [InlineData("name = 'a'\nby = 0", "toml-wrong-value", "line 2, column 6 says by = 0; it must be the id of a person, 1 or more.")]
    [InlineData("name = 'a'\nby = 1.5", "toml-wrong-value", "line 2, column 6 says by = 1.5; it must be a whole number without quotes.")]
    [InlineData("name = 'a'\n[printer]\nright_mm = nan", "toml-wrong-value", "line 3, column 12 says printer.right_mm = nan; it must be a number, such as 0.5, without quotes.")]
    [InlineData("name = 'a'\n[printer]\ndown_mm = 21", "toml-wrong-value", "line 3, column 11 says printer.down_mm = 21; it must lie between -20 and 20 millimetres.")]
    public void Says_where_it_is_wrong_and_what_is_right(string text, string name, string message)
    {
        var refused = Assert.Throws<RefusedException>(() => RegisterToml.Read(text, "register.toml"));

        Assert.Equal(name, refused.Name);
        Assert.Equal("register.toml was not read: " + message, refused.Message);
    }

    [Theory]
    [InlineData("example.org/prints")]
    [InlineData("/prints")]
    [InlineData("ftp://example.org")]
    [InlineData("file:///tmp")]
    [InlineData("https://example.org/?q=")]
    [InlineData("https://example.org/#top")]
    [InlineData("https://example.org/a b")]
    public void Refuses_an_address_to_which_no_code_can_be_added(string url)
    {
        var refused = Assert.Throws<RefusedException>(() => RegisterToml.Read($"name = 'a'\nbase_url = '{url}'", "register.toml"));

        Assert.Equal(
            $"register.toml was not read: line 2, column 12 says base_url = '{url}'; it must be a whole address such as \"https://example.org/prints\", without ? and #.",
            refused.Message);
    }
}
