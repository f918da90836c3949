using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>A sheet of a divided edition went first to whom it was agreed for. That it did not is worth knowing and never wrong: people agree anew.</summary>
public sealed class EntitlementsAreKept : IRule
{
    public string Name => nameof(EntitlementsAreKept);

    public string Sentence => "Where an edition was divided, each sheet went first to whom it was agreed for.";

    public string Basis => "common practice, no source; who is to have which numbers is agreed when an edition is signed";

    public IEnumerable<Finding> Check(Work work) =>
        from edition in work.Editions
        where edition.Entitlements.Count > 0
        from sheet in work.Impressions
        where sheet.Number is not null && edition.Find(sheet.Numbering) is not null
        let agreed = edition.Entitlements.FirstOrDefault(one => one.Numbering == sheet.Numbering && sheet.Number >= one.First && sheet.Number <= one.Last)
        where agreed is not null
        let went = FirstOther(sheet)
        where went is not null && went != agreed.Person && !IsMakers(work, sheet, agreed)
        select this.Note(
            work.SubjectOf(sheet),
            $"{work.CalledSheet(sheet)} was agreed for {work.Book.NameOf(agreed.Person)}, and went first to {work.Book.NameOf(went)}.",
            "Correct the division or the record of the sheet where one was mistyped; where it was agreed anew, this can stay as it is.");

    /// <summary>The first known owner after the one it was made for.</summary>
    private static long? FirstOther(Impression sheet)
    {
        var first = sheet.Ownership.Count > 0 ? sheet.Ownership[0].To.Person : null;

        return sheet.Ownership.Skip(1).FirstOrDefault(link => link.To.Person is not null && link.To.Person != first)?.To.Person;
    }

    // Their own numbers its makers sell to whom they like.
    private static bool IsMakers(Work work, Impression sheet, Entitlement agreed) =>
        work.Makers.Any(maker => maker.Id == agreed.Person) || (sheet.Ownership.Count > 0 && sheet.Ownership[0].To.Person == agreed.Person);
}
