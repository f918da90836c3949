namespace EditionRegister.Tui.Tests.ReadingIn;

/// <summary>A folder of files, and the form that asks for one of them.</summary>
internal sealed class FilesToRead : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("edreg-read-");

    public const string Good = "Artist,Title,Edition no.,Edition of,Signed,Colour notes\r\nAda Brandt,Môle,3/20,20,yes,\"blue\nand grey\"\r\nAda Brandt,Môle,about 5,20,no,\r\nAda Brandt,Dyke,1/8,8,yes,\r\n";

    public string Folder => _folder.FullName;

    public string Write(string name, string text)
    {
        File.WriteAllText(Path.Combine(Folder, name), text);

        return Path.Combine(Folder, name);
    }

    /// <summary>Opens the form from the plan chest and answers it with a file of these lines.</summary>
    public async Task AskAsync(TestHouse house, string text, string name = "prints.csv")
    {
        await house.PressAsync("1", "a");
        await house.FillAsync(("File", Write(name, text)));
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
