using System.Globalization;

namespace EditionRegister.Domain.Tests;

// The tests of the tests: without these two, a class that "runs in Turkish" might not.
public sealed class InCultureTests() : InCulture("tr-TR")
{
    [Fact]
    public void The_culture_set_is_the_one_the_test_runs_in()
    {
        Assert.Equal("tr-TR", CultureInfo.CurrentCulture.Name);
    }

    [Fact]
    public void The_machine_knows_the_culture_and_not_only_its_name()
    {
        Assert.Equal("İ", "i".ToUpper(CultureInfo.CurrentCulture));
        Assert.Equal("1,5", 1.5.ToString(CultureInfo.GetCultureInfo("de-DE")));
    }
}
