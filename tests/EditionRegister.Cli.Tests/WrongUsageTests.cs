namespace EditionRegister.Cli.Tests;

public sealed class WrongUsageTests : IDisposable
{
    private readonly CliRun _cli = new();

    public void Dispose() => _cli.Dispose();

    [Theory]
    [InlineData("version --jsn", "edreg version does not know “--jsn”. Did you mean “--json”?", "edreg version [options]", "edreg version --help")]
    [InlineData("versoin", "edreg does not know “versoin”. Did you mean “version”?", "edreg COMMAND [options]", "edreg --help")]
    [InlineData("--regsiter x version", "edreg version does not know “--regsiter”. Did you mean “--register”?", "edreg version [options]", "edreg version --help")]
    [InlineData("version extra", "edreg version does not know “extra”.", "edreg version [options]", "edreg version --help")]
    [InlineData("[suggest:1] vers", "edreg does not know “[suggest:1]”.", "edreg COMMAND [options]", "edreg --help")]
    [InlineData("[untitled] version", "edreg version does not know “[untitled]”.", "edreg version [options]", "edreg version --help")]
    [InlineData("@version", "edreg does not know “@version”. Did you mean “version”?", "edreg COMMAND [options]", "edreg --help")]
    [InlineData("version --by Mara", "--by takes a person's number, such as 2, and “Mara” is none.", "edreg version [options]", "edreg version --help")]
    [InlineData("version --by -1", "--by takes a person's number, such as 2, and “-1” is none.", "edreg version [options]", "edreg version --help")]
    [InlineData("version --register", "Required argument missing for option: '--register'.", "edreg version [options]", "edreg version --help")]
    public void Says_what_is_wrong_and_how_it_is_done(string line, string sentence, string usage, string more)
    {
        var code = _cli.Run(line.Split(' '));

        Assert.Equal(2, code);
        Assert.Equal("", _cli.Output.ToString());
        Assert.Equal($"{sentence}\n\nUsage: {usage}\nMore: {more}\n", _cli.Error.ToString());
    }

    [Fact]
    public void Shows_the_help_in_spite_of_a_wrong_word()
    {
        var code = _cli.Run("version", "--jsn", "--help");

        Assert.Equal(0, code);
        Assert.StartsWith("Says which version of the program this is.\n\nUsage: edreg version [options]\n", _cli.Output.ToString(), StringComparison.Ordinal);
        Assert.Equal("", _cli.Error.ToString());
    }

    [Fact]
    public void Shows_no_control_characters_of_a_wrong_word()
    {
        _cli.Run("\u001b[31mversion");

        Assert.DoesNotContain('\u001b', _cli.Error.ToString());
    }
}
