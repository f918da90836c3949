namespace EditionRegister.Cli.Tests;

/// <summary>A register of the first form, made by the program of that time, under the commands of today.</summary>
public sealed class UpgradeTests : IDisposable
{
    private readonly CliRun _cli = new();

    public UpgradeTests()
    {
        var register = Directory.CreateDirectory(Path.Combine(_cli.Folder, "studio")).FullName;
        File.Copy(Path.Combine(Clone.Folder, "tests", "EditionRegister.Store.Tests", "fixtures", "register-0001.db"), Path.Combine(register, "register.db"));
        _cli.Set("EDREG_REGISTER", register);
    }

    public void Dispose() => _cli.Dispose();

    [Fact]
    public void It_is_listed_and_checked_as_it_is()
    {
        Assert.Equal(0, _cli.Run("list"));
        Assert.EndsWith("49 of 49 impressions.\n", _cli.Output.ToString(), StringComparison.Ordinal);
        Assert.Equal("show  name  kind  place  host  opens  closes  sheets\n0 shows.\n", _cli.Typed("edreg shows list"));
        Assert.StartsWith("Nothing to mend: 0 contradictions, 0 queries, 0 notes; the logbook is unbroken from 1 to 82, ", _cli.Typed("edreg check"), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_cli.Folder, "studio", "backups")));
    }

    [Fact]
    public void The_first_change_upgrades_it_and_says_where_the_copy_is()
    {
        var said = _cli.Typed("edreg shows make \"Open studio\"");

        Assert.Equal(
            "Show 1 recorded: “Open studio”, exhibition.\n"
            + "This register was of an older form and has been upgraded to form 2; the file as it was is kept at /home/mira/studio/backups/form-1-20260301T100000Z.db.\n",
            said);
        Assert.StartsWith("Nothing to mend: 0 contradictions, 0 queries, 0 notes; the logbook is unbroken from 1 to 84, ", _cli.Typed("edreg check"), StringComparison.Ordinal);
    }
}
