using EditionRegister.Domain;

namespace EditionRegister.Store.Tests;

public sealed class OwnerOnlyTests : IDisposable
{
    private const UnixFileMode ForOthers =
        UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute | UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.OtherExecute;

    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_register_and_all_that_lies_beside_it_are_for_their_owner_alone()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Permissions of Unix.");
        RegisterFolder folder = new(_folder.File("register"));
        var store = RegisterStore.Make(folder, Surroundings.Usual, demo: false);

        store.Write("furnish", writing =>
        {
            // Beside the database, while a deed is under way, lie its write-ahead log and the index of that.
            Assert.True(Directory.GetFiles(folder.FullPath).Length >= 3);
            Assert.All(Directory.GetFiles(folder.FullPath), file => Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, ModeOf(file)));

            return true;
        });

        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, ModeOf(folder.FullPath));
        Assert.Equal(UnixFileMode.None, ModeOf(folder.Database) & ForOthers);
    }

    [Fact]
    public void A_register_is_made_beside_its_place_and_leaves_nothing_there()
    {
        RegisterFolder folder = new(_folder.File("register"));
        Directory.CreateDirectory(folder.FullPath);

        // What a killed program left behind is no reason to fail, nor part of the new register.
        File.WriteAllText(folder.Database + ".part", "half a register");
        File.WriteAllText(folder.Database + ".part-wal", "and its log");

        var store = RegisterStore.Make(folder, Surroundings.Usual, demo: false);

        Assert.Empty(Directory.GetFiles(folder.FullPath, "*.part*"));
        Assert.Empty(store.Check(_ => []));
    }

    [Fact]
    public void A_register_is_never_made_over_another()
    {
        RegisterFolder folder = new(_folder.File("register"));
        RegisterStore.Make(folder, Surroundings.Usual, demo: false);
        var before = File.ReadAllBytes(folder.Database);

        var refused = Assert.Throws<RefusedException>(() => RegisterStore.Make(folder, Surroundings.Usual, demo: true));

        Assert.Equal("register-exists", refused.Name);
        Assert.Equal(before, File.ReadAllBytes(folder.Database));
    }

    [Fact]
    public void A_file_whose_writing_fails_halfway_stays_as_it_was()
    {
        var path = _folder.File("inventory.csv");
        File.WriteAllText(path, "as it was");

        Assert.Throws<InvalidOperationException>(() => OwnerOnly.Write(path, stream =>
        {
            stream.WriteByte(1);

            throw new InvalidOperationException();
        }));

        Assert.Equal("as it was", File.ReadAllText(path));
        Assert.Equal([path], Directory.GetFiles(_folder.Path));
    }

    [Fact]
    public void A_file_written_anew_is_whole_and_for_its_owner_alone()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Permissions of Unix.");
        var path = _folder.File("inventory.csv");

        // Made with the usual permissions, which let others read.
        File.WriteAllText(path, "as it was, for everyone");

        OwnerOnly.Write(path, stream => stream.Write("new"u8));

        Assert.Equal("new", File.ReadAllText(path));
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, ModeOf(path));
    }

    private static UnixFileMode ModeOf(string path) => OperatingSystem.IsWindows() ? UnixFileMode.None : File.GetUnixFileMode(path);
}
