using EditionRegister.Domain.Reading.Dates;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Bench.Readings;

/// <summary>Every figure of what is read in free text, for the files of a folder.</summary>
internal static class ReadingFigures
{
    private static readonly string[] Files =
        ["inscriptions_labelled*.tsv", "inscriptions.tsv", "dates*.tsv", "dimensions*.tsv", "dimension_fractions.tsv", TechniqueFigures.File, TechniquesByHandFigures.File];

    public static int Run(string folder, TextWriter output)
    {
        if (!Directory.Exists(folder))
        {
            output.WriteLine($"There is no folder {folder}.");

            return 1;
        }

        SayFiles(folder, output);
        InscriptionFigures.Print(folder, output);
        DateFigures.Print(folder, output);
        SizeFigures.Print(folder, output);
        TechniqueFigures.Print(folder, output);
        TechniquesByHandFigures.Print(folder, output);

        output.WriteLine();
        Speed("inscriptions", "inscriptions.tsv", text => EditionStatementReader.Read(text), folder, output);
        Speed("dates", "dates*.tsv", text => DateReader.Read(text), folder, output);
        Speed("sizes", "dimensions*.tsv", text => SizeReader.Read(text), folder, output);
        Speed("techniques", TechniqueFigures.File, text => TechniqueReader.Read(text), folder, output);

        return 0;
    }

    private static void SayFiles(string folder, TextWriter output)
    {
        output.WriteLine($"read in {Path.GetFullPath(folder)}: {string.Join(", ", Files.Select(name => Found(folder, name)).OfType<string>().Select(Path.GetFileName))}");

        foreach (var name in Files.Where(name => Found(folder, name) is null))
        {
            output.WriteLine($"not there: {name}; its figures are missing below");
        }
    }

    private static void Speed(string name, string file, Action<string> read, string folder, TextWriter output)
    {
        if (Found(folder, file) is not { } path)
        {
            output.WriteLine($"{name}: no {file} there to say how long an ordinary text takes.");

            return;
        }

        var table = TableFile.Read(path);
        Slowness.Print(name, read, [.. table.Rows.Select(row => table[row, "text"])], output);
    }

    private static string? Found(string folder, string name) => Directory.GetFiles(folder, name).Order(StringComparer.Ordinal).FirstOrDefault();
}
