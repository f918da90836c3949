using EditionRegister.Domain.Facts;
using EditionRegister.Store;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>Undoes a file that was read in, while nothing was built on it. Its codes stay given, so that the same file takes them back.</summary>
public sealed class UndoBatch(RegisterStore store)
{
    /// <summary>Answers how many impressions were taken out again.</summary>
    /// <exception cref="Domain.RefusedException">batch-not-found or batch-built-on.</exception>
    public int Run(long batch) => store.Write("undo-batch", writing =>
    {
        if (!writing.Read.ReadInStands(batch))
        {
            throw ReadInRefusals.NoSuchBatch(batch);
        }

        var made = writing.RowsMadeBy(batch);

        if (made.FirstOrDefault(row => !row.IsAsMade) is { } changed)
        {
            throw ReadInRefusals.BuiltOn(batch, Called(writing.Read, changed.Table, changed.Id));
        }

        if (writing.Read.PointedAtFromOutside(made.Select(row => new RowName(row.Table, row.Id)).ToHashSet()) is { } user)
        {
            throw ReadInRefusals.BuiltOn(batch, Called(writing.Read, user.Table, user.Id));
        }

        writing.StartBatch("deed");

        foreach (var row in made.Reverse())
        {
            writing.On(RootNamed(row)).Unset(row.Table, row.Id);
        }

        writing.On(Root.Batch(batch)).Set("batch", batch, ("undone", "yes"));

        return made.Count(row => row.Table == "impression");
    });

    /// <summary>A sheet by its code, what a show lists by both; anything else by its number.</summary>
    private static string Called(Reader reader, string table, long id) => table switch
    {
        "impression" when CodeOf(reader, id) is { } code => code,
        "show_impression" when reader.ShowListing(id) is { } listing => FormattableString.Invariant($"{CodeOf(reader, listing.Impression)} is or was on the list of show {listing.Show}"),
        _ => FormattableString.Invariant($"{table.Replace('_', ' ')} {id}"),
    };

    private static string? CodeOf(Reader reader, long sheet) =>
        reader.Works().SelectMany(work => work.Impressions).FirstOrDefault(one => one.Id == sheet)?.ShownCode;

    private static Root RootNamed(RowMade row)
    {
        var parts = row.Root.Split('/');

        return new Root(parts[0], long.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture));
    }
}
