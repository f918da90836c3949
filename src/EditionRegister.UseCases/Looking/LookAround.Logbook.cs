using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Looking;

public sealed partial class LookAround
{
    private const int MatesShown = 100;

    /// <summary>A page of the logbook, newest first.</summary>
    public LogbookSeen LogbookPage(LogbookWanted wanted) => store.Read(reader => new LogbookPages(reader, wanted).Find());

    /// <summary>One entry with everything it sets; null where the logbook has no such entry.</summary>
    public EntrySeen? EntryWhole(long n) => store.Read(reader =>
    {
        if (reader.EntriesUp(n).FirstOrDefault() is not { } entry || entry.N != n || reader.FactsOf(n) is not { } facts)
        {
            return null;
        }

        var (mates, size) = Mates(reader, entry);
        Subjects subjects = new(reader, mates.Append(entry).Select(mate => Subjects.IdIn(mate.Root, "work")).OfType<long>().ToHashSet());

        return new EntrySeen(
            subjects.Listed(entry), [.. facts.Facts.Select(EntryFactSeen.Of)], mates.ConvertAll(subjects.Listed), size, facts.Leaf, reader.HeadAt(n).Head, facts.Damage);
    });

    /// <summary>Recomputes the hashes of the whole logbook, up to the first entry that does not fit.</summary>
    /// <param name="progress">Told now and then how many entries are done and how many there are, on the calling thread.</param>
    /// <param name="cancelled">Stops on the way.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public LogbookProof Unbroken(Action<long, long>? progress = null, CancellationToken cancelled = default) => store.Read(reader => reader.Unbroken(progress, cancelled));

    /// <summary>The entries of a batch were written at once, so they stand together.</summary>
    private static (List<EntryLine> Mates, long Size) Mates(Reader reader, EntryLine entry)
    {
        if (entry.Batch is null)
        {
            return ([], 0);
        }

        var first = reader.EntriesDown(entry.N + 1).TakeWhile(mate => mate.Batch == entry.Batch).Last().N;
        List<EntryLine> mates = [];
        var size = 0L;

        foreach (var mate in reader.EntriesUp(first).TakeWhile(mate => mate.Batch == entry.Batch))
        {
            size++;

            if (mates.Count < MatesShown)
            {
                mates.Add(mate);
            }
        }

        return (mates, size);
    }
}
