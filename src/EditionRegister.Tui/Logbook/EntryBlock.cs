using EditionRegister.UseCases;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.Tui.Logbook;

/// <summary>An entry of a row: not read yet, missing from the logbook, or there; and whether the batch it read in can be undone.</summary>
internal readonly record struct EntryFound(bool IsRead, EntryListed? Entry, bool IsReadInStanding)
{
    public static EntryFound NotYet => default;
}

/// <summary>Some entries of the logbook in a row, newest first.</summary>
/// <param name="At">Which block it is, from the newest on.</param>
/// <param name="Entries">What was found.</param>
/// <param name="Next">Where the next block begins; null where nothing follows.</param>
/// <param name="Standing">Batches among them that read in a file and stand.</param>
internal sealed record EntryBlock(int At, IReadOnlyList<EntryListed> Entries, long? Next, IReadOnlySet<long> Standing)
{
    public static EntryBlock Read(Register register, int at, LogbookWanted wanted)
    {
        var seen = register.LookAround.LogbookPage(wanted);
        var standing = register.LookAround.StandingBatches(seen.Page.Where(entry => UndoBatch.MayUndo(entry.Deed)).Select(entry => entry.Batch).OfType<long>());

        return new EntryBlock(at, seen.Page, seen.Next, standing);
    }

    /// <param name="row">Counted from the newest of all.</param>
    /// <param name="n">The number the entry must have, where every entry has a row; in a broken logbook some are missing.</param>
    public EntryFound Find(int row, long? n)
    {
        var within = row - (At * EntryBlocks.Size);
        var entry = within < Entries.Count && (n is null || Entries[within].N == n) ? Entries[within] : Entries.FirstOrDefault(one => one.N == n);

        return new EntryFound(true, entry, entry?.Batch is { } batch && entry.Deed == "read-in" && Standing.Contains(batch));
    }
}
