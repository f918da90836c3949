using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Sheets;

/// <summary>Asks which spare takes the place of a damaged sheet.</summary>
internal static class ReplaceForm
{
    private const string By = "The spare";
    private const string FaultLabel = "Fault of the old one";
    private const string Date = "Date";
    private const string Reason = "The story";

    /// <exception cref="Domain.RefusedException">one-sheet-only.</exception>
    public static Form Of(Desk desk, SheetsAtHand sheets)
    {
        var (work, old) = sheets.IsOne ? sheets.First : throw ImpressionRefusals.OneSheetOnly("Which spare takes the place of a sheet");
        List<string> spares = [.. work.Impressions.Where(sheet => sheet is { Standing: "spare" or "kept", Number: null, IsSigned: false }).OrderByDescending(sheet => sheet.Standing).Select(sheet => sheet.ShownCode)];

        return new Form($"Replace {sheets.Called} by a spare", [
            new Field(By, spares.Count == 1 ? spares[0] : "")
            {
                IsNeeded = true,
                Form = spares.Count == 0 ? "the code of an unsigned spare; none is known of this work" : "the code of an unsigned spare",
                Known = typed => Fields.Matching(spares, typed),
            },
            new Field(FaultLabel, old.Fault ?? "")
            {
                IsNeeded = !Replacement.IsDestroyed(old),
                Form = "what is wrong with it: crease, tear, stain, other",
                Known = typed => Fields.Matching([.. work.OwnWords.AllFaults.Select(fault => fault.Word)], typed),
                Wrong = typed => work.OwnWords.FaultOf(typed) is null ? $"“{typed}” is no fault this register knows: write {string.Join(", ", work.OwnWords.AllFaults.Select(fault => fault.Word))}." : null,
            },
            Fields.Today(Date, desk.Today),
            new Field(Reason) { Form = "creased at the framer's" },
        ], form => SaveAsync(desk, old.ShownCode, form))
        {
            Name = "replace",
            OwnEachTime = [By, FaultLabel, Reason],
            About = [sheets.About, "Its number goes to the spare; it keeps its record and its certificate is withdrawn. No number is made."],
            Caution = "Take the number off the old sheet, or destroy it: two sheets must not say the same. This is not undone with one key.",
        };
    }

    private static async Task<Saved> SaveAsync(Desk desk, string old, Form form) => new(await desk.Store.Do(register =>
    {
        var before = register.LookAround.Impression(old).Impression;
        register.ReplaceSheet.Run(old, form[By]!, new Replacement { Fault = form[FaultLabel], Date = Fields.DateOf(form[Date]) ?? Domain.Dates.RecordedDate.None, Reason = form[Reason] });
        var seen = register.LookAround.Impression(form[By]!);

        return SheetSaid.Replaced(seen.Work, before, seen.Impression);
    }));
}
