using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Sets;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>The copies of a set have every part, and what lies in a copy is with it and belongs with it.</summary>
public sealed class SetsAreWhole : IRule
{
    public string Name => nameof(SetsAreWhole);

    public string Sentence => "A copy of a set that is closed, certified or out of the maker's hands has a sheet of every part, and what lies in a copy is where the copy is and belongs to whom the copy belongs.";

    public string Basis => "common practice, no source: a portfolio is numbered, signed, certified and sold as one";

    public IEnumerable<Finding> Check(Work work) => work.Set is not { } set ? [] :
    [
        .. from copy in work.Impressions
           where copy.SetSheets.Count > 0 || IsCopy(work, copy)
           from finding in Missing(work, set, copy).Concat(Several(work, copy)).Concat(copy.SetSheets.Where(sheet => sheet.IsIn).SelectMany(sheet => OfSheet(work, set, copy, sheet)))
           select finding,
    ];

    private static bool IsCopy(Work work, Impression copy) => copy is { Number: not null, IsAsListed: false } && work.EditionOf(copy) is { IsWhole: true };

    /// <summary>Only of a copy that must be whole by now: while it is being gathered nothing is missing.</summary>
    private IEnumerable<Finding> Missing(Work work, PrintSet set, Impression copy)
    {
        var lacks = set.Parts.Where(part => copy.SetSheets.All(sheet => !sheet.IsIn || sheet.Work != part.Work)).ToList();

        if (lacks.Count == 0 || !IsCopy(work, copy))
        {
            yield break;
        }

        var titles = InWords.List([.. lacks.Select(part => $"“{part.Title}”")]);
        var takenOut = lacks.Any(part => copy.SetSheets.Any(sheet => sheet.Work == part.Work));

        if (copy.ValidCertificate is { } certificate)
        {
            yield return this.Contradiction(
                work.SubjectOf(copy),
                $"Certificate {certificate.Serial} stands for {Copy(work, copy)}, and no sheet of {titles} lies in it.",
                "Gather the sheets into the copy, or supersede the certificate.");
        }
        else if (takenOut || Leaving.HasLeft(copy) || work.EditionOf(copy) is { IsClosed: true })
        {
            yield return this.Query(
                work.SubjectOf(copy),
                $"No sheet of {titles} lies in {Copy(work, copy)}{(takenOut ? ", and one was taken out" : Leaving.HasLeft(copy) ? ", which has left the maker's hands" : ", whose edition is closed")}.",
                "Gather the sheets into the copy, or put down in its note that it is not whole.");
        }
    }

    private IEnumerable<Finding> Several(Work work, Impression copy) =>
        from same in copy.SetSheets.Where(sheet => sheet.IsIn).GroupBy(sheet => sheet.Work)
        where same.Count() > 1
        select this.Query(
            work.SubjectOf(copy),
            $"{InWords.Figure(same.Count())} sheets of one part lie in {Copy(work, copy)}: {InWords.List([.. same.Select(Called)])}.",
            "Take out those that do not belong there.");

    private IEnumerable<Finding> OfSheet(Work work, PrintSet set, Impression copy, SetSheet sheet)
    {
        var (subject, title) = (work.SubjectOf(copy), TitleOf(set, sheet));

        if (title is null)
        {
            yield return this.Contradiction(subject, $"{Called(sheet)} lies in {Copy(work, copy)}, and its work is no part of the set.", "Add the part to the set, or take the sheet out.");
        }

        if (sheet.Where is { State: "gone" } && copy.Where is not { State: "gone" })
        {
            yield return this.Contradiction(subject, $"{Called(sheet)}{Of(title)} lies in {Copy(work, copy)}, and is gone for good.", "Take the sheet out of the copy, or correct where it went.");
        }
        else if (IsElsewhere(copy.Where, sheet.Where))
        {
            yield return this.Query(
                subject,
                $"{Called(sheet)}{Of(title)} lies in {Copy(work, copy)}, and is {WhereInWords.Of(work, sheet.Where)}; the copy is {WhereInWords.Of(work, copy.Where)}.",
                "Record where the sheet went with its copy, or take it out of the copy.");
        }

        if (BelongsToAnother(set, copy, sheet))
        {
            yield return this.Contradiction(
                subject,
                $"{Called(sheet)}{Of(title)} lies in {Copy(work, copy)} and belongs to {WhereInWords.OwnerOf(work, sheet.Whose)}; the copy belongs to {WhereInWords.OwnerOf(work, copy.Whose)}.",
                "Take the sheet out of the copy, or record that it passed on with it.");
        }

        if (set.Form != "exchange" && !sheet.IsNumberedAs(work.NumberingOf(copy)?.KindWord, copy.Number))
        {
            yield return this.Note(subject, $"{Called(sheet)}{Of(title)} lies in {Copy(work, copy)}, whose number is another.", "Nothing needs to be done where it is meant so.");
        }
    }

    /// <summary>What is not known is nowhere else.</summary>
    private static bool IsElsewhere(Position? copy, Position? sheet) =>
        copy is { State: "placed" or "with" } && sheet is { State: "placed" or "with" } && copy != sheet;

    /// <summary>The prints of several makers are each their maker's until the copy passes on; in an exchange every maker hands theirs over on their own.</summary>
    private static bool BelongsToAnother(PrintSet set, Impression copy, SetSheet sheet) =>
        copy.Whose is { State: "known" } whose && sheet.Whose is { State: "known" } && sheet.Whose != whose
        && (set.Form == "exchange" ? copy.Ownership.Count > 1 && sheet.HasPassedOn : copy.Ownership.Count > 1 || sheet.HasPassedOn);

    private static string? TitleOf(PrintSet set, SetSheet sheet) => set.Parts.FirstOrDefault(part => part.Work == sheet.Work)?.Title;

    private static string Of(string? title) => title is null ? "" : $" of “{title}”";

    private static string Called(SetSheet sheet) => $"{sheet.Number} ({sheet.ShownCode})";

    private static string Copy(Work work, Impression copy) => $"copy {work.NumberShown(copy) ?? "without a number"} of {work.CalledEdition(work.EditionOf(copy))} ({copy.ShownCode})";
}
