using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Integrity;
using EditionRegister.Store;
using EditionRegister.Store.Integrity;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Checking;

/// <summary>Checks the whole register: the file, the logbook, and every work with every rule. Changes nothing.</summary>
public sealed class CheckRegister(RegisterStore store)
{
    /// <summary>The logbook's head as it was checked; null until everything was, and where damage broke that off.</summary>
    public LogbookHead? Head { get; private set; }

    /// <summary>Everything found, one at a time, to the end; what was accepted among it, with its acceptance.</summary>
    /// <param name="progress">Told how many works are checked and how many there are, once the file and the logbook are; may throw to stop.</param>
    /// <param name="hashPictures">Reads every picture's file and hashes it; else only whether it is there, and as long as it should be.</param>
    public IEnumerable<Finding> Run(Action<long, long>? progress = null, bool hashPictures = false) => store.Check(reader => Check(reader, progress, hashPictures));

    private IEnumerable<Finding> Check(Reader reader, Action<long, long>? progress, bool hashPictures)
    {
        foreach (var finding in PictureFiles.Check(reader, store.Folder, hashPictures))
        {
            yield return finding;
        }

        foreach (var (_, finding) in WorkFindings.Of(reader, progress))
        {
            yield return finding;
        }

        Head = reader.Head;
    }
}
