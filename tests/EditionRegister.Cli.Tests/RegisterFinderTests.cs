using EditionRegister.Domain;

namespace EditionRegister.Cli.Tests;

public sealed class RegisterFinderTests : IDisposable
{
    private const string WayOut = "Make one with “edreg new DIR”, or see the demo with “edreg demo”.";

    private readonly CliRun _cli = new();

    public void Dispose() => _cli.Dispose();

    [Fact]
    public void Takes_the_option_before_the_variable_before_the_current_folder()
    {
        var byOption = _cli.MakeRegister("option");
        var byVariable = _cli.MakeRegister("variable");
        var around = _cli.MakeRegister("around");
        _cli.CurrentDirectory = Directory.CreateDirectory(Path.Combine(around, "exports", "2026")).FullName;

        var third = RegisterFinder.Find(null, _cli.Services);
        _cli.Set("EDREG_REGISTER", byVariable);
        var second = RegisterFinder.Find(null, _cli.Services);
        var first = RegisterFinder.Find(byOption, _cli.Services);

        Assert.Equal(around, third);
        Assert.Equal(byVariable, second);
        Assert.Equal(byOption, first);
    }

    [Fact]
    public void Reads_a_relative_name_from_the_current_folder()
    {
        var studio = _cli.MakeRegister("studio");

        var found = RegisterFinder.Find("studio", _cli.Services);

        Assert.Equal(studio, found);
    }

    [Fact]
    public void Treats_an_empty_variable_as_none()
    {
        _cli.Set("EDREG_REGISTER", "");
        _cli.CurrentDirectory = _cli.MakeRegister("studio");

        var found = RegisterFinder.Find(null, _cli.Services);

        Assert.Equal(_cli.CurrentDirectory, found);
    }

    [Fact]
    public void Does_not_look_elsewhere_when_the_named_folder_is_no_register()
    {
        _cli.CurrentDirectory = _cli.MakeRegister("studio");

        var refused = Assert.Throws<RefusedException>(() => RegisterFinder.Find("attic", _cli.Services));

        var attic = Path.Combine(_cli.CurrentDirectory, "attic");
        Assert.Equal("register-not-found", refused.Name);
        Assert.Equal($"No register was opened: --register names {attic}, which holds no register.db. {WayOut}", refused.Message);
    }

    [Fact]
    public void Names_the_variable_that_leads_nowhere()
    {
        _cli.Set("EDREG_REGISTER", "/nowhere");

        var refused = Assert.Throws<RefusedException>(() => RegisterFinder.Find(null, _cli.Services));

        Assert.Equal($"No register was opened: EDREG_REGISTER names {Path.GetFullPath("/nowhere")}, which holds no register.db. {WayOut}", refused.Message);
    }

    [Fact]
    public void Refuses_an_empty_name_instead_of_taking_the_current_folder()
    {
        _cli.CurrentDirectory = _cli.MakeRegister("studio");

        var refused = Assert.Throws<RefusedException>(() => RegisterFinder.Find("", _cli.Services));

        Assert.Equal($"No register was opened: --register is given without the name of a folder. {WayOut}", refused.Message);
    }

    [Fact]
    public void Says_where_it_looked_and_ends_with_three()
    {
        _cli.Bring((context, line) => context.RegisterFolder(line).Length);

        var code = _cli.Run("try");

        Assert.Equal(3, code);
        Assert.Equal(
            $"No register was opened: neither --register nor EDREG_REGISTER names one, and neither {_cli.Folder} nor a folder above it holds a register.db. {WayOut}\n",
            _cli.Error.ToString());
    }
}
