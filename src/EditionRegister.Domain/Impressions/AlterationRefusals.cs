namespace EditionRegister.Domain.Impressions;

/// <summary>Why a change on the sheet itself cannot be recorded so.</summary>
public static class AlterationRefusals
{
    public static RefusedException ChangesNothing(Impression sheet, string text) =>
        new("alteration-changes-nothing", $"“{text}” stood on {sheet.ShownCode} and is to stand there still, so nothing was altered on the sheet. Nothing was changed. Where only the record was mistyped, correct it with `edreg inscribe`.");

    public static RefusedException OfNothing(Impression sheet, string what) =>
        new("alteration-of-nothing", $"Nothing is on record of the {(what == "other" ? "place" : what)} that was altered on {sheet.ShownCode}, and what stands there now was not said either. Nothing was changed. Say what stood there with --was, or what stands there now with --became.");

    public static RefusedException NoSuchInscription(Impression sheet, string? was) => was is null
        ? new("inscription-not-there", $"{sheet.ShownCode} has several inscriptions, and it was not said which was altered. Nothing was changed. Say what stood there, letter by letter, with --was.")
        : new("inscription-not-there", $"{sheet.ShownCode} has no inscription “{was}” on record. Nothing was changed. `edreg show {sheet.ShownCode}` shows them letter by letter.");

    public static RefusedException NotThere(Impression sheet) =>
        new("alteration-not-there", $"No change on the sheet itself is on record for {sheet.ShownCode}, so none can be taken back. Nothing was changed. What was mistyped in the record is corrected with `edreg inscribe`.");
}
