using Microsoft.VisualBasic.FileIO;

namespace EditionRegister.EndToEnd.Tests;

/// <summary>A spreadsheet that nobody here wrote (museum inscriptions, CC0; sources in museum/README.md) goes in, is checked, and comes out again.</summary>
public sealed class MuseumTests : IDisposable
{
    private readonly RealProgram _edreg = new();

    public void Dispose() => _edreg.Dispose();

    [Fact]
    public void Goes_in_is_checked_and_comes_out_as_labels_and_csv()
    {
        Assert.SkipUnless(Tools.Has("awk"), "awk makes the spreadsheet");
        File.WriteAllText(_edreg.In("museum.csv"), Tools.Run("awk", "-f", Beside("make-spreadsheet.awk"), Beside("inscriptions-cc0.tsv")));
        _edreg.Do("new", "studio");

        var preview = _edreg.Do("read", "museum.csv", "--map", "text=number", "--register", "studio");
        var read = _edreg.Do("read", "museum.csv", "--map", "text=number", "--go", "--register", "studio");
        var check = _edreg.Do("check", "--register", "studio");
        _edreg.Do("inventory", "--out", "inventory.csv", "--register", "studio");
        var codes = Rows(_edreg.In("inventory.csv")).Skip(1).Select(row => row[0]).ToList();
        _edreg.Do("labels", "--all", "--out", "labels.pdf", "--register", "studio");

        Assert.Contains("343", preview, StringComparison.Ordinal);
        Assert.Contains("343", read, StringComparison.Ordinal);
        Assert.Contains("0 contradictions", check, StringComparison.Ordinal);
        Assert.Equal(343, codes.Distinct().Count());
        Assert.Equal(326, Rows(_edreg.In("inventory.csv")).Skip(1).Count(row => row[8].Length > 0));
        Assert.True(new FileInfo(_edreg.In("labels.pdf")).Length > 10_000);
    }

    /// <summary>Second opinion: the CSV parser of the Visual Basic library.</summary>
    private static List<string[]> Rows(string path)
    {
        using TextFieldParser parser = new(path) { Delimiters = [","], HasFieldsEnclosedInQuotes = true, TrimWhiteSpace = false };
        List<string[]> rows = [];

        while (parser.ReadFields() is { } row)
        {
            rows.Add(row);
        }

        return rows;
    }

    private static string Beside(string file) => Path.Combine(Clone.Folder, "tests", "EditionRegister.EndToEnd.Tests", "museum", file);
}
