using EditionRegister.Domain;
using EditionRegister.Store;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>Takes a CSV file into the register as one batch: all of it, or nothing.</summary>
public sealed class ReadIn(RegisterStore store, RegisterSettings settings)
{
    /// <summary>Shows what would happen, changing nothing; problems are in the report.</summary>
    /// <exception cref="RefusedException">The file cannot be read at all, or a --map does not fit it.</exception>
    public ReadInReport Preview(string path, IReadOnlyList<string> maps)
    {
        var file = SpreadsheetFile.Open(path, maps);

        return store.Read(reader =>
        {
            FileListing listing = new(reader, file.Table, file.Columns, settings.Currency);

            return Report(file, listing, reader.BatchOf(file.Sha256));
        });
    }

    /// <summary>Reads the file in; the same file a second time adds nothing.</summary>
    /// <exception cref="RefusedException">rows-not-read with every problem by line, column and value; or the file cannot be read at all.</exception>
    public ReadInReport Run(string path, IReadOnlyList<string> maps)
    {
        var file = SpreadsheetFile.Open(path, maps);

        return store.Write("read-in", writing =>
        {
            if (writing.Read.BatchOf(file.Sha256) is { } before)
            {
                return Report(file, null, before);
            }

            FileListing listing = new(writing.Read, file.Table, file.Columns, settings.Currency);

            if (listing.Problems.Count > 0)
            {
                throw ReadInRefusals.BadRows(file.Name, listing.Problems);
            }

            var batch = writing.StartBatch("read-in", ("sha256", file.Sha256), ("rows", file.Table.Rows.Count), ("file_name", file.Name));
            BatchWriter writer = new(writing, batch);

            foreach (var work in listing.Works)
            {
                writer.Write(work);
            }

            return Report(file, listing, null) with { Batch = batch };
        });
    }

    private static ReadInReport Report(SpreadsheetFile file, FileListing? listing, long? before) => new(
        file.Name,
        file.Columns,
        file.Table.Rows.Count,
        listing?.Works.Count ?? 0,
        listing?.Works.Count(work => work.Known is null) ?? 0,
        listing?.Works.Sum(work => work.Editions.Count(edition => KnownEditions.Edition(work.Known, edition) is null)) ?? 0,
        listing?.Remarks ?? [],
        listing?.Readings ?? [],
        before is null ? listing?.Problems ?? [] : [],
        before,
        before is not null);
}
