namespace EditionRegister.Cli.Tests;

/// <summary>Registers of the first and the second form, made by the programs of their time, under the commands of today.</summary>
public sealed class UpgradeTests : IDisposable
{
    private readonly CliRun _cli = new();

    public void Dispose() => _cli.Dispose();

    [Fact]
    public void One_of_the_first_form_is_listed_and_checked_as_it_is()
    {
        Take(1);

        Assert.Equal(0, _cli.Run("list"));
        Assert.EndsWith("49 of 49 impressions.\n", _cli.Output.ToString(), StringComparison.Ordinal);
        Assert.Equal("show  name  kind  place  host  opens  closes  sheets\n0 shows.\n", _cli.Typed("edreg shows list"));
        Assert.StartsWith("Nothing to mend: 0 contradictions, 0 queries, 0 notes; the logbook is unbroken from 1 to 82, ", _cli.Typed("edreg check"), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_cli.Folder, "studio", "backups")));
    }

    [Fact]
    public void One_of_the_second_form_is_listed_and_checked_as_it_is()
    {
        Take(2);

        Assert.Equal(0, _cli.Run("list"));
        Assert.EndsWith("49 of 49 impressions.\n", _cli.Output.ToString(), StringComparison.Ordinal);
        Assert.EndsWith("1 show.\n", _cli.Typed("edreg shows list"), StringComparison.Ordinal);
        Assert.Contains(" accepted", _cli.Typed("edreg check"), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_cli.Folder, "studio", "backups")));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void The_first_change_upgrades_it_and_says_where_the_copy_is(int form)
    {
        Take(form);

        var said = _cli.Typed("edreg place add Attic");

        Assert.EndsWith(
            $"This register was of an older form and has been upgraded to form 4; the file as it was is kept at /home/mira/studio/backups/form-{form}-20260301T100000Z.db.\n",
            said, StringComparison.Ordinal);
        Assert.DoesNotContain("upgraded", _cli.Typed("edreg place add Cellar"), StringComparison.Ordinal);
        Assert.Equal(0, _cli.Run("check"));
    }

    private void Take(int form)
    {
        var register = Directory.CreateDirectory(Path.Combine(_cli.Folder, "studio")).FullName;
        File.Copy(Path.Combine(Clone.Folder, "tests", "EditionRegister.Store.Tests", "fixtures", $"register-000{form}.db"), Path.Combine(register, "register.db"));
        _cli.Set("EDREG_REGISTER", register);
    }
}
