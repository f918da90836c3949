using EditionRegister.Domain;
using EditionRegister.Domain.Conditions;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Conditions;

namespace EditionRegister.Tui.Conditions;

/// <summary>What is asked when sheets are examined.</summary>
internal static class ExamineForm
{
    private const string Occasion = "Occasion";
    private const string Date = "Date";
    private const string Examiner = "Examined by";
    private const string Summary = "In short";
    private const string Condition = "Condition from now";
    private const int Remarks = 6;

    public static async Task<Opening?> OfAsync(Desk desk, SheetsAtHand sheets)
    {
        var terms = await desk.Store.Do(register => register.LookAround.ConditionTerms());
        var last = sheets.IsOne && sheets.First.Sheet.ConditionReports is [.., var newest] ? newest : null;
        var given = last?.Remarks.Select(remark => new RemarkMade(remark.Term, remark.Position, remark.Note, remark.Picture).ToString()).ToList() ?? [];
        var count = Math.Max(Remarks, given.Count + 2);

        return new Form(
            $"Examine {sheets.Called}",
            [
                Field.OneOf(Occasion, ConditionOccasion.All, Likely(sheets, last)),
                Fields.Today(Date, desk.Today),
                Known.Person(Examiner, sheets, "who looked: a name of the address book"),
                .. Enumerable.Range(0, count).Select(at => Remark(at + 1, at < given.Count ? given[at] : "", terms)),
                new Field(Summary) { Form = "in a sentence: no fault seen" },
                new Field(Condition) { Form = "the sheet's short present condition; empty leaves it as it is" },
            ],
            form => SaveAsync(desk, sheets, form, count))
        {
            Name = "examine",
            About =
            [
                sheets.About,
                last is null ? "A remark is a term, where on the sheet after @, and a note after a colon." : $"The remarks of report {Counted.Figure(last.Ordinal)} stand there: take away what is no more, add what is new.",
            ],
            OwnEachTime = [.. Enumerable.Range(1, count).Select(Label), Summary, Condition],
            Caution = ConditionSaid.CautionInShort,
        };
    }

    /// <summary>What went out last is likely to have come back.</summary>
    private static string Likely(SheetsAtHand sheets, ConditionReport? last) =>
        last?.Occasion == ConditionOccasion.GoingOut ? ConditionOccasion.ComingBack
        : sheets.Sheets.All(sheet => sheet.Whereabouts is [.., { Kind: "lent" }]) ? ConditionOccasion.GoingOut
        : ConditionOccasion.AtRest;

    private static string Label(int number) => $"Remark {Counted.Figure(number)}";

    private static Field Remark(int number, string given, IReadOnlyList<ConditionTerm> terms) => new(Label(number), given)
    {
        Form = "dented-corner@lower left: 3 mm",
        Known = typed => typed.Contains('@', StringComparison.Ordinal) || typed.Contains(':', StringComparison.Ordinal) ? [] : Fields.Matching([.. terms.Select(term => term.Word)], typed),
        Wrong = typed => Wrong(typed, terms),
    };

    private static string? Wrong(string typed, IReadOnlyList<ConditionTerm> terms)
    {
        try
        {
            var read = RemarkMade.Read(typed);

            return terms.Any(term => term.Word == read.Term) ? null : ConditionRefusals.TermUnknown(read.Term, terms).Message;
        }
        catch (RefusedException refusal)
        {
            return refusal.Message;
        }
    }

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form, int count)
    {
        ConditionToReport report = new()
        {
            Occasion = form[Occasion]!,
            Date = DayOf.Deed(desk, form[Date]),
            Examiner = form[Examiner],
            Remarks = [.. Enumerable.Range(1, count).Select(number => form[Label(number)]).OfType<string>()],
            Summary = form[Summary],
            Condition = form[Condition],
        };
        var done = await desk.Store.Do(register => register.ReportCondition.Run(sheets.ByCode, report));
        var cares = string.Concat(ConditionSaid.Cares(report.Remarks.Select(remark => RemarkMade.Read(remark).Term)).Select(care => " " + care));

        return new Saved(ConditionSaid.Reported(done, report.Occasion, report.Date, report.Summary, report.Remarks.Count) + cares);
    }
}
