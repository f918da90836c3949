using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Impressions;

/// <summary>A signing session as it stands: what is still unsigned, in the order of the numbers, each with the line to be pencilled.</summary>
public sealed record SigningSeen(Work Work, Edition Edition, IReadOnlyList<(Impression Sheet, PencilText Pencil)> Left);

/// <summary>Takes a person through the signing of an edition, sheet by sheet.</summary>
public sealed class SignSheets(RegisterStore store)
{
    /// <param name="edition">The edition.</param>
    /// <param name="signature">As it is to read; null is as before in this work, else the maker's name.</param>
    /// <exception cref="Domain.RefusedException">edition-not-found.</exception>
    public SigningSeen Left(long edition, string? signature = null) => store.Read(reader =>
    {
        var (work, found) = reader.EditionOrRefuse(edition);

        return Seen(work, found, signature);
    });

    /// <summary>Number, title and signature stand on the sheets as spelled. Answers them as they were.</summary>
    /// <param name="edition">The edition.</param>
    /// <param name="numbers">Which of its numbers, "6-8, A/P I"; null is the next unsigned one.</param>
    /// <param name="signature">As it reads; null is as before.</param>
    /// <exception cref="Domain.RefusedException">nothing-to-sign, signed-already, number-not-given.</exception>
    public IReadOnlyList<(Impression Sheet, PencilText Pencil)> Done(long edition, string? numbers = null, string? signature = null) => store.Write("inscribe", writing =>
    {
        var (work, found) = writing.Read.EditionOrRefuse(edition);
        var signed = numbers is null
            ? Next(work, found, signature)
            : [.. Choosing.ImpressionsChosen.Find(writing.Read, new() { Edition = edition, Sheets = numbers }).SelectMany(chosen => chosen.Sheets).Select(sheet => (sheet, Signing.PencilFor(work, sheet, signature)))];
        var deed = writing.On(Root.Work(work.Id));

        foreach (var (sheet, pencil) in signed)
        {
            if (sheet.IsSigned)
            {
                throw SigningRefusals.SignedAlready(work, sheet);
            }

            Signing.SignedSo(sheet, pencil).Record(work, [sheet], deed);
        }

        return signed;
    });

    private static List<(Impression Sheet, PencilText Pencil)> Next(Work work, Edition edition, string? signature) =>
        Seen(work, edition, signature).Left is [var next, ..] ? [next] : throw SigningRefusals.NoneLeft(work, edition);

    private static SigningSeen Seen(Work work, Edition edition, string? signature) =>
        new(work, edition, [.. Signing.Left(work, edition).Select(sheet => (sheet, Signing.PencilFor(work, sheet, signature)))]);
}
