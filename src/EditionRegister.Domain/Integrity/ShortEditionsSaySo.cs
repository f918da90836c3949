using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>What is said of a short edition is so.</summary>
public sealed class ShortEditionsSaySo : IRule
{
    public string Name => nameof(ShortEditionsSaySo);

    public string Sentence => "An edition disclosed as short has numbers that were never printed, and one whose size was set anew has none.";

    public string Basis => "after the stipulations of a lithography workshop: a run that fails is numbered as a short edition";

    public IEnumerable<Finding> Check(Work work) =>
        from edition in work.Editions
        where edition.FellShort is not null
        let never = edition.Numberings.Where(numbering => numbering.Kind is { InSize: true }).Sum(numbering => numbering.Numbers.Count(slot => slot.Fate == "never-printed"))
        where (edition.FellShort == "disclosed" && never == 0) || (edition.FellShort == "reset" && never > 0)
        select this.Query(
            work.SubjectOf(edition),
            never == 0
                ? $"The edition of {work.CalledEdition(edition)} is disclosed as short, and no number of it was never printed."
                : $"The size of {work.CalledEdition(edition)} was set anew to what was printed, and {InWords.Count(never, "number of it was", "numbers of it were")} never printed.",
            "Look at the map of the edition, and say what became of its numbers.");
}
