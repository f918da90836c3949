using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Domain.Chains;

/// <summary>Why a sheet cannot be sent so, kept so, or taken for found.</summary>
public static class MoveRefusals
{
    public static RefusedException UntilBefore(RecordedDate until, RecordedDate from) =>
        new("until-before-it-begins", $"Until {until} is before {from}, when it begins. Nothing was changed. Correct one of the two dates.");

    public static RefusedException Missing(Impression sheet, WhereaboutsLink last) =>
        new("sheet-is-missing", $"{sheet.ShownCode} is recorded as {last.Kind} ({last.Moved}). Nothing was changed. Record first that it was found, with `edreg find`, or look whether it is another sheet.");

    public static RefusedException NotMissing(Impression sheet, string where) =>
        new("sheet-not-missing", $"{sheet.ShownCode} is not missing: it is {where}. Nothing was changed. Only what is lost, stolen, gone or nobody knows where can be found; look whether it is another sheet.");

    public static RefusedException NotConsigned(Impression sheet, string where) =>
        new("not-consigned", $"{sheet.ShownCode} is in nobody's consignment, so nobody can pass it on: it is {where}. Nothing was changed. Consign it with `edreg consign`, which says who answers for it.");

    public static RefusedException AnswersForItAlready(Impression sheet, string name) =>
        new("passed-on-in-a-circle", $"{sheet.ShownCode} went through the hands of {name} in this consignment already. Nothing was changed. If it came back to them, take the step by which it left them back, or record its return and consign it anew.");

    public static RefusedException NobodyToCollect(Impression sheet, string owner) =>
        new("nobody-to-collect", $"{sheet.ShownCode} belongs to {owner}, who made it, so nobody is to collect it. Nothing was changed. Record first who it was sold or given to.");

    public static RefusedException ReservedAlready(Impression sheet, string name, RecordedDate until) =>
        new("reserved-already", $"{sheet.ShownCode} is reserved already, for {name}{Until(until)}. Nothing was changed. Lift that first with `edreg lift`.");

    public static RefusedException NotOursToReserve(Impression sheet, string owner) =>
        new("not-ours-to-reserve", $"{sheet.ShownCode} is no longer the maker's: it belongs to {owner}. Nothing was changed. Only what is still to be had can be reserved; look whether it is another sheet.");

    public static RefusedException NotReserved(Impression sheet) =>
        new("not-reserved", $"{sheet.ShownCode} is not reserved. Nothing was changed. `edreg show {sheet.ShownCode}` shows what is kept for whom.");

    public static RefusedException ReservedForAnother(Impression sheet, string name, RecordedDate until) =>
        new("reserved-for-another", $"{sheet.ShownCode} is reserved for {name}{Until(until)}. Nothing was changed. Lift the reservation with `edreg lift`, or say that it is meant with --despite-reservation, which lifts it.");

    public static RefusedException OnApproval(Impression sheet, string name, RecordedDate until) =>
        new("on-approval-with-another", $"{sheet.ShownCode} is on approval with {name}{Until(until)}, and they have the first word. Nothing was changed. Record its return with `edreg return`, or say that it is meant with --despite-reservation.");

    public static RefusedException NotSoldLast(Impression sheet, string owner) =>
        new("not-sold-last", $"{sheet.ShownCode} was not sold or exchanged last, so no buyer can give it back: it belongs to {owner}. Nothing was changed. `edreg show {sheet.ShownCode}` shows whose it was.");

    private static string Until(RecordedDate until) => until.IsKnown ? $" until {until}" : "";
}
