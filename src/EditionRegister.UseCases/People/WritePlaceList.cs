using EditionRegister.Domain;
using EditionRegister.Formats.Csv;
using EditionRegister.Store;
using EditionRegister.UseCases.Documents;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.Wording;

namespace EditionRegister.UseCases.People;

/// <summary>Writes what lies in a place to a file: as CSV where its name ends so, else as text to print.</summary>
public sealed class WritePlaceList(RegisterStore store, RegisterSettings settings)
{
    /// <summary>Answers what was listed.</summary>
    /// <exception cref="RefusedException">place-not-found or output-not-written.</exception>
    public PlaceContents Run(long place, string path, bool alone = false)
    {
        var contents = new LookAround(store).PlaceContents(place, alone);
        Output.Write(path, stream => Write(contents, stream, path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)));

        return contents;
    }

    private void Write(PlaceContents contents, Stream stream, bool isCsv)
    {
        if (isCsv)
        {
            CsvFile.Write(stream, PlaceShown.CsvHeaders, PlaceShown.CsvRows(contents));
            return;
        }

        using StreamWriter writer = new(stream, leaveOpen: true) { NewLine = "\n" };

        foreach (var line in PlaceShown.Document(contents, settings.Name, DateOnly.FromDateTime(store.Time.GetLocalNow().DateTime)))
        {
            writer.WriteLine(line);
        }
    }
}
