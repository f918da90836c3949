namespace EditionRegister.Store.Tests.Sqlite;

public sealed class SqliteFileTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("prints; Mode=Memory")]
    [InlineData("Mira's prints")]
    [InlineData("a 'second' = one")]
    [InlineData(" Druckgraphik für alle 版画")]
    [InlineData("a \"second\" one")]
    public void Opens_the_register_in_a_folder_of_any_name(string name)
    {
        if (OperatingSystem.IsWindows() && name.Contains('"', StringComparison.Ordinal))
        {
            Assert.Skip("Windows has no such names.");
        }

        var store = RegisterStore.Make(new RegisterFolder(_folder.File(name)), Surroundings.Usual, demo: false);

        var head = store.Read(reader => reader.Head);

        Assert.Equal(1, head.N);
        Assert.Empty(store.Check(_ => []));
    }
}
