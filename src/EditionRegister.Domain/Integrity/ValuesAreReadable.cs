using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>Every value is one the register can read: a known word, a real day, a sound code, a thing that is there.</summary>
public sealed class ValuesAreReadable : IRule
{
    public string Name => nameof(ValuesAreReadable);

    public string Sentence => "Every value can be read: words are known ones, days are days, codes have their check character, and what is pointed at is there.";

    public string Basis => "the register's own lists and forms; codes after ISO/IEC 7064 MOD 37,36";

    public IEnumerable<Finding> Check(Work work) =>
        from unreadable in ReadableWords.Of(work).Concat(ReadableDates.Of(work)).Concat(ReadableFigures.Of(work)).Concat(ReadableLinks.Of(work))
        select this.Contradiction(
            unreadable.Subject,
            unreadable.Message,
            "Compare with the logbook and with the newest copy in the backups folder, and go on from what agrees.");
}
