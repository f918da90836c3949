using EditionRegister.Domain.Integrity;

namespace EditionRegister.Domain.Documents;

/// <summary>Why no certificate was issued, in whole sentences. Names are permanent.</summary>
internal static class CertificateRefusals
{
    public static RefusedException NotKept(string sheet, string standing) => new(
        "certificate-sheet-not-kept",
        $"No certificate was issued: {InSentence(sheet)} is {standing.Replace('-', ' ')}, and only a kept sheet or a numbered proof gets one. Keep the sheet and number it first.");

    public static RefusedException NotNumbered(string sheet) => new(
        "certificate-sheet-not-numbered",
        $"No certificate was issued: {InSentence(sheet)} has no number yet. Number it first.");

    public static RefusedException NotOurs(string sheet) => new(
        "certificate-edition-not-ours",
        $"No certificate was issued: the edition of {InSentence(sheet)} is someone else's, and only who made an edition can certify it. Ask its maker or publisher.");

    public static RefusedException PartlyKnown(string sheet) => new(
        "certificate-edition-partly-known",
        $"No certificate was issued: the edition of {InSentence(sheet)} is only partly known to this register, and a certificate says how large all of it is. Account for every number with `edreg fate`, then say that it is whole with `edreg whole`.");

    public static RefusedException StandsAlready(string sheet, string serial) => new(
        "certificate-stands-already",
        $"No certificate was issued: {serial} already stands for {InSentence(sheet)}. Let a new one take its place with --supersede, or leave it.");

    public static RefusedException NothingToSupersede(string sheet, string serial) => new(
        "certificate-to-supersede-not-valid",
        $"No certificate was issued: {serial} is no valid certificate for {InSentence(sheet)}, so nothing can take its place. Issue a first certificate instead.");

    public static RefusedException Contradicted(string sheet, IReadOnlyList<Finding> contradictions) => new(
        "certificate-contradicted",
        $"No certificate was issued for {InSentence(sheet)}, because the register contradicts what it would state. {string.Join(" ", contradictions.Select(finding => finding.Message))} Put that right first.");

    private static string InSentence(string sheet) => sheet.StartsWith("Sheet ", StringComparison.Ordinal) ? "s" + sheet[1..] : sheet;
}
