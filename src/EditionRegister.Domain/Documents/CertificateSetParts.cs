using System.Globalization;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Sets;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Documents;

/// <summary>What a certificate says of a copy of a set: what kind of set it is, and every part with the number of its sheet; of a sheet that lies in a copy, in which.</summary>
public static class CertificateSetParts
{
    public static IEnumerable<CertificateFact> Of(Work work, Impression impression)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(impression);

        if (work.Set is { } set)
        {
            yield return new CertificateFact("set", $"{SetForm.NameOf(set.Form)} of {Figure(set.Parts.Count)} {(set.Parts.Count == 1 ? "part" : "parts")}, {Signed(set.SignedOn)}");
            yield return new CertificateFact("parts", set.Parts.Count == 0 ? CertificateFacts.NotKnown : string.Join("; ", set.Parts.Select(part => $"{Figure(part.Ordinal)}. {part.Title}, {NumberOf(impression, part)}")));
        }
        else if (impression.InSet is { } lies)
        {
            yield return new CertificateFact("set", $"lies in copy {lies.CopyNumber} of {lies.SetTitle}");
        }
    }

    private static string NumberOf(Impression copy, SetPart part) =>
        copy.SetSheets.FirstOrDefault(sheet => sheet.IsIn && sheet.Work == part.Work)?.Number ?? "not in this copy";

    private static string Signed(string signedOn) => signedOn switch
    {
        "colophon" => "signed on the colophon instead of the sheets",
        "sheets" => "signed on the sheets",
        "both" => "signed on the colophon and on the sheets",
        _ => "where it is signed is not known",
    };

    private static string Figure(int number) => number.ToString(CultureInfo.InvariantCulture);
}
