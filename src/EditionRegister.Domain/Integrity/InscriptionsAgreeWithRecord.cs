using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>An inscription that names a number names the one the sheet has.</summary>
public sealed class InscriptionsAgreeWithRecord : IRule
{
    public string Name => nameof(InscriptionsAgreeWithRecord);

    public string Sentence => "An inscription that is read as a number of the edition or of a proof names the kind, number and size that the sheet has by record.";

    public string Basis => "common practice, no source: what stands on the sheet is the evidence, the register its record";

    public IEnumerable<Finding> Check(Work work) =>
        from sheet in work.Impressions
        where sheet is { Number: not null, Inscriptions.Count: > 0 }
        let numbering = work.NumberingOf(sheet)
        where numbering is { Kind: not null, Notation: not null }
        from inscription in sheet.Inscriptions
        let says = inscription.Says ?? SheetReader.Inscription(inscription.Text, work.OwnWords)
        where says is { Kind: "numbered" or "proof" } && !PencilSaysSo(work, sheet, numbering, says)
        let differ = What(work, sheet, numbering, says).ToList()
        where differ.Count > 0
        select Disagrees(work, sheet, inscription, says, differ);

    /// <summary>Where the pencil says the same, another rule speaks of it.</summary>
    private static bool PencilSaysSo(Work work, Impression sheet, Numbering numbering, SaidOfNumber says) =>
        sheet.Read(numbering.Notation, work.OwnWords) is { } pencil && says.AsNumber(work.OwnWords) is { } inscribed
        && (pencil.Kind, pencil.Number, pencil.Of) == (inscribed.Kind, inscribed.Number, inscribed.Of);

    /// <summary>The words may say less than the register; they may not say otherwise.</summary>
    private static IEnumerable<string> What(Work work, Impression sheet, Numbering numbering, SaidOfNumber says)
    {
        if (SheetReader.KindOf(says.Series, work.OwnWords) is { } kind ? kind != numbering.Kind : numbering.Kind == NumberingKind.Numbered)
        {
            yield return "kind";
        }

        if (says.Number is not { } number)
        {
            yield break;
        }

        if (number != sheet.Number)
        {
            yield return "number";
        }

        if (says is { Hedge: null, Size: { } size } && (numbering.Size ?? size) != size)
        {
            yield return "size";
        }
    }

    private Finding Disagrees(Work work, Impression sheet, Inscription inscription, SaidOfNumber says, List<string> differ) => this.Query(
        work.SubjectOf(sheet),
        $"“{inscription.Text?.Trim()}” stands on {sheet.ShownCode} and reads as {says.AsStatement().InWords(work.OwnWords)}, and the register has {work.NumberShown(sheet)} of {work.CalledEdition(work.EditionOf(sheet))}: {InWords.List(differ)} differ{(differ.Count == 1 ? "s" : "")}.",
        "Look at the sheet: correct the record that was mistyped, or record what is changed on the sheet. Where the words mean something else, accept this with that for a reason.");
}
