using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Documents;

/// <summary>What sets one sheet apart from the others of its edition, in words; null where nothing does.</summary>
public static class SheetText
{
    /// <summary>For the keeper of the register, a label before each value.</summary>
    public static IReadOnlyList<(string Label, string Value)> Of(Work work, Impression sheet)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(sheet);

        return
        [
            .. Line("Variant", sheet.Variant),
            .. Line("Hand-coloured", HandColouring(work, sheet)),
            .. Line("Ghost of", With(GhostOf(work, sheet), Impressions.Ghosts.Of(sheet)?.Note)),
            .. Line("Its ghost", Ghosts(work, sheet)),
            .. Line("Dedicated", sheet.Dedication),
            .. Line("Takes the place of", With(Replaces(work, sheet), Replacement.Of(sheet)?.Note)),
            .. Line("Replaced by", With(ReplacedBy(work, sheet), Replacement.Of(work, sheet) is { } other ? Replacement.Of(other)?.Note : null)),
        ];
    }

    /// <summary>The passes under the hand that it went through: colours, and when.</summary>
    public static string? HandColouring(Work work, Impression sheet)
    {
        ArgumentNullException.ThrowIfNull(work);
        var passes = work.RunOf(sheet)?.Passes.Where(pass => pass.Kind == "hand-colouring" && (pass.TakesAll || pass.Sheets.Any(one => one.Impression == sheet.Id))).ToList() ?? [];

        return passes.Count == 0 ? null : string.Join("; ", passes.Select(pass =>
            $"{(pass.Name is { Length: > 0 } name ? name : pass.Colours.Count > 0 ? InWords.List([.. pass.Colours.Select(colour => colour.Colour)]) : "by hand")}{(pass.Done.IsKnown ? $", {DateInWords.Of(pass.Done)}" : "")}"));
    }

    public static string? GhostOf(Work work, Impression sheet) =>
        Impressions.Ghosts.Of(sheet) is not { } link ? null : $"{Called(work, link.Other)}{Dated(link.Made)}";

    /// <summary>The sheets pulled after it without inking the plate anew.</summary>
    public static string? Ghosts(Work work, Impression sheet)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(sheet);
        var ghosts = work.Impressions.Where(other => Impressions.Ghosts.Of(other)?.Other == sheet.Id).Select(other => Called(work, other.Id)).ToList();

        return ghosts.Count == 0 ? null : InWords.List(ghosts);
    }

    /// <summary>7KQ4-M2X3 (crease), on 3 May 2026.</summary>
    public static string? Replaces(Work work, Impression sheet)
    {
        ArgumentNullException.ThrowIfNull(work);

        if (Replacement.Of(sheet) is not { } link)
        {
            return null;
        }

        var old = work.Impressions.FirstOrDefault(one => one.Id == link.Other);
        var what = old is null ? null : Replacement.IsDestroyed(old) ? "destroyed" : work.OwnWords.FaultOf(old.Fault)?.Name ?? old.Fault;

        return $"{Called(work, link.Other)}{(what is null ? "" : $" ({what})")}{Dated(link.Made)}";
    }

    public static string? ReplacedBy(Work work, Impression sheet) =>
        Replacement.Of(work, sheet) is { } other ? $"{other.ShownCode}, as {work.NumberOf(other)}{Dated(Replacement.Of(other)!.Made)}" : null;

    /// <summary>The dedication as papers for others say it: names of the address book by their policy, and a pupil's not at all.</summary>
    public static string? PublicDedication(Work work, Impression sheet)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(sheet);

        if (string.IsNullOrWhiteSpace(sheet.Dedication))
        {
            return null;
        }

        if (work.Makers.Any(maker => maker.IsProtected))
        {
            return "dedicated copy";
        }

        var said = sheet.Dedication.Trim();

        // The longest first, so that no part of a name is left standing.
        foreach (var person in work.Book.People.Values.Where(person => !string.IsNullOrWhiteSpace(person.Name) && person.PublicText != person.Name).OrderByDescending(person => person.Name!.Length))
        {
            said = said.Replace(person.Name!, person.PublicText, StringComparison.OrdinalIgnoreCase);
        }

        return said;
    }

    /// <summary>The sheets that prove that a matrix was cancelled.</summary>
    public static string? Cancellation(Work work)
    {
        ArgumentNullException.ThrowIfNull(work);
        var proofs = work.Matrices.Where(matrix => matrix.FateProof is not null).Select(matrix => $"{Called(work, matrix.FateProof!.Value)}, of the {matrix.Called}").ToList();

        return proofs.Count == 0 ? null : $"cancellation proof {InWords.List(proofs)}";
    }

    private static string? With(string? said, string? note) => said is null || string.IsNullOrWhiteSpace(note) ? said : $"{said}: {note.Trim()}";

    private static IEnumerable<(string, string)> Line(string label, string? value) => string.IsNullOrWhiteSpace(value) ? [] : [(label, value.Trim())];

    private static string Called(Work work, long sheet) => work.Impressions.FirstOrDefault(one => one.Id == sheet)?.ShownCode ?? $"a sheet that is {CertificateFacts.NotKnown}";

    private static string Dated(RecordedDate date) => date.IsKnown ? $", {DateInWords.Of(date)}" : "";
}
