namespace EditionRegister.EndToEnd.Tests;

/// <summary>What must feel instant never waits for the mapping of tables to load; lists may.</summary>
public sealed class LoadedTests(LoadedTests.Demo demo) : IClassFixture<LoadedTests.Demo>
{
    [Theory]
    [InlineData("check")]
    [InlineData("map 1")]
    [InlineData("show MEKA-X5ED")]
    [InlineData("work list")]
    [InlineData("person list")]
    [InlineData("place add Attic")]
    [InlineData("price --edition 1 --sheets 2 --for-sale no")]
    public void A_command_that_lists_no_impressions_loads_no_mapping(string command) =>
        Assert.DoesNotContain(Loaded(command), IsMapping);

    [Theory]
    [InlineData("list")]
    [InlineData("place list studio")]
    public void A_list_of_impressions_does(string command) => Assert.Contains(Loaded(command), IsMapping);

    private static bool IsMapping(string assembly) => assembly.StartsWith("Microsoft.EntityFrameworkCore", StringComparison.Ordinal);

    private string[] Loaded(string command)
    {
        demo.Edreg.Do(command.Split(' '));
        var loaded = File.ReadAllLines(demo.Edreg.In("loaded.txt"));
        Assert.Contains("Microsoft.Data.Sqlite", loaded);

        return loaded;
    }

    public sealed class Demo : IDisposable
    {
        public Demo()
        {
            Edreg.Do("demo", "--to", "demo");
            Edreg.Environment["DOTNET_STARTUP_HOOKS"] = typeof(StartupHook).Assembly.Location;
            Edreg.Environment[StartupHook.File] = Edreg.In("loaded.txt");
            Edreg.Environment["EDREG_REGISTER"] = Edreg.In("demo", "register");
        }

        public RealProgram Edreg { get; } = new();

        public void Dispose() => Edreg.Dispose();
    }
}
