using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Stock;

namespace EditionRegister.Domain.Tests.Stock;

public class ScannedCodeTests
{
    [Theory]
    [InlineData("7KQ4-M2X3")]
    [InlineData("7kq4m2x3")]
    [InlineData("  7KQ4 M2X3\t")]
    [InlineData("\uFEFF7KQ4-M2X3")]
    [InlineData("https://saltmarsh.example/p/7KQ4M2X3")]
    [InlineData("HTTPS://SALTMARSH.EXAMPLE/P/7KQ4M2X3")]
    [InlineData("http://saltmarsh.example/a/b/7kq4-m2x3/?from=label#top")]
    public void A_code_is_understood_however_a_scanner_or_a_person_gives_it(string scanned)
    {
        var read = ScannedCode.Read(scanned);

        Assert.Equal(RegisterCode.Form, read.Code?.ToString());
        Assert.Null(read.Problem);
    }

    // One character of 7KQ4-M2X3 changed, or two changed round: ISO/IEC 7064 MOD 37,36 finds every one of these.
    [Theory]
    [InlineData("7KQ4-M2X4")]
    [InlineData("7KQ4-M3X3")]
    [InlineData("K7Q4-M2X3")]
    [InlineData("https://saltmarsh.example/p/7KQ4M2X4")]
    public void A_misread_code_says_that_its_check_character_fails(string scanned) =>
        Assert.Equal("its check character fails, so one of the others was misread", ScannedCode.Read(scanned).Problem);

    [Theory]
    [InlineData("7KQ4-M2X")]
    [InlineData("7KQ4-M2X33")]
    [InlineData("7KQ0-M2X3")]
    [InlineData("4006381333931")]
    [InlineData("https://saltmarsh.example/p/")]
    [InlineData("ftp://saltmarsh.example/p/7KQ4M2X3")]
    [InlineData("drawer 2")]
    public void What_has_not_the_form_of_a_code_says_so(string scanned) =>
        Assert.Equal("it has not the form of a code, 7KQ4-M2X3", ScannedCode.Read(scanned).Problem);
}
