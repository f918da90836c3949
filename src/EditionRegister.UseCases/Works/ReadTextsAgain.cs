using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Works;

/// <summary>
/// Reads words that were written before the program could read them: in a register of an older form, or of an older program that knew fewer
/// words. What was written and what was read before stays as it is. One batch, which can be undone.
/// </summary>
public sealed class ReadTextsAgain(RegisterStore store)
{
    /// <summary>What would be read, changing nothing.</summary>
    public TextsReadAgain Preview() => store.Read(reader =>
    {
        // A deed that goes nowhere: what it would set is only counted.
        var texts = reader.Works().Select(work => new ReadingAgain(work, new Deed(Root.Work(work.Id), _ => 0)).Run()).Where(read => read.Count > 0).ToList();

        return new TextsReadAgain(texts.Count, [.. texts.SelectMany(read => read)], null);
    });

    /// <summary>Sets what was read; no batch where nothing was.</summary>
    public TextsReadAgain Run() => store.Write("read-texts-again", writing =>
    {
        List<TextReadAgain> texts = [];
        var works = 0;
        long? batch = null;

        foreach (var id in writing.Read.Works().Select(work => work.Id).ToList())
        {
            var work = writing.Read.Work(id)!;

            if (new ReadingAgain(work, new Deed(Root.Work(id), _ => 0)).Run().Count > 0)
            {
                batch ??= writing.StartBatch("deed");
                texts.AddRange(new ReadingAgain(work, writing.On(Root.Work(id))).Run());
                works++;
            }
        }

        return new TextsReadAgain(works, texts, batch);
    });
}

/// <summary>Words that were read again, of how many works, and the batch it became.</summary>
public sealed record TextsReadAgain(int Works, IReadOnlyList<TextReadAgain> Texts, long? Batch);
