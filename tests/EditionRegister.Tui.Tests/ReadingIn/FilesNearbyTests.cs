using EditionRegister.Tui.ReadingIn;

namespace EditionRegister.Tui.Tests.ReadingIn;

/// <summary>Files offered while their path is typed.</summary>
public sealed class FilesNearbyTests : IDisposable
{
    private readonly FilesToRead _files = new();
    private readonly FilesNearby _nearby = new(".CSV", ".TSV", ".TXT");

    public void Dispose() => _files.Dispose();

    [Fact]
    public void Files_that_may_be_meant_come_first_then_folders()
    {
        _files.Write("Prints.csv", "");
        _files.Write("prints.pdf", "");
        _files.Write("prints.tsv", "");
        Directory.CreateDirectory(Path.Combine(_files.Folder, "prints of last year"));
        Directory.CreateDirectory(Path.Combine(_files.Folder, ".prints"));

        var offered = _nearby.Of(_files.Folder + "/pr");

        Assert.Equal(new[] { "Prints.csv", "prints.tsv", "prints of last year/" }.Select(name => $"{_files.Folder}/{name}"), offered);
    }

    [Theory]
    [InlineData("/nowhere at all/pr")]
    [InlineData("\0")]
    [InlineData("''")]
    public void Half_a_path_offers_nothing(string typed) => Assert.Empty(_nearby.Of(typed));
}
