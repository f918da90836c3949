using System.Globalization;

namespace EditionRegister.Cli.Tests;

public sealed class CultureTests : IDisposable
{
    private readonly CliRun _cli = new();

    public void Dispose() => _cli.Dispose();

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void Says_the_same_in_every_culture(string culture)
    {
        string[] lines = ["", "--help", "version", "version --json", "VERSION", "versiom", "version --by 1.000", "version --by 2", "version --register", "try"];

        var here = lines.Select(line => Said(CultureInfo.InvariantCulture, line)).ToList();
        var there = lines.Select(line => Said(CultureInfo.GetCultureInfo(culture), line)).ToList();

        Assert.Equal(here, there);
    }

    [Fact]
    public void Leaves_the_callers_language_as_it_was()
    {
        var before = CultureInfo.CurrentUICulture;

        try
        {
            CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("tr-TR");
            _cli.Run("version");

            Assert.Equal("tr-TR", CultureInfo.CurrentUICulture.Name);
        }
        finally
        {
            CultureInfo.CurrentUICulture = before;
        }
    }

    [Fact]
    public void Uses_no_colour()
    {
        _cli.Run("--help");

        Assert.DoesNotContain('\u001b', _cli.Output.ToString());
    }

    private string Said(CultureInfo culture, string line)
    {
        var (before, language) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);

        try
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (culture, culture);
            var code = _cli.Run(line.Split(' ', StringSplitOptions.RemoveEmptyEntries));

            return $"{code.ToString(CultureInfo.InvariantCulture)}\n{_cli.Output}\n{_cli.Error}";
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (before, language);
        }
    }
}
