namespace EditionRegister.Bench.Readings;

/// <summary>Every figure of what is read in free text, for the files of a folder.</summary>
internal static class ReadingFigures
{
    public static int Run(string folder, TextWriter output)
    {
        if (!Directory.Exists(folder))
        {
            output.WriteLine($"There is no folder {folder}.");

            return 1;
        }

        InscriptionFigures.Print(folder, output);
        DateFigures.Print(folder, output);
        SizeFigures.Print(folder, output);
        TechniqueFigures.Print(folder, output);
        PaperFigures.Print(folder, output);
        WorstFigures.Print(folder, output);

        return 0;
    }
}
