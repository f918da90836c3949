using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is recorded of the sheets themselves: whether they are kept, why one is left out, and their condition.</summary>
internal static class StandingForm
{
    private const string Standing = "Standing";
    private const string FaultLabel = "Fault";
    private const string FaultNote = "More about it";
    private const string Condition = "Condition";
    private const string AsItIs = "as it is";
    private const string LeftOut = "left-out";

    public static Form Of(Desk desk, SheetsAtHand sheets)
    {
        var (standing, fault, note, condition) = (
            sheets.Same(sheet => sheet.Standing).Value, sheets.Same(sheet => sheet.Fault).Value, sheets.Same(sheet => sheet.FaultNote).Value, sheets.Same(sheet => sheet.Condition).Value);
        var own = sheets.First.Work.OwnWords;
        var standingField = SortingDeeds.Standings.Contains(standing) ? Field.OneOf(Standing, SortingDeeds.Standings, standing) : Field.OneOf(Standing, [AsItIs, .. SortingDeeds.Standings]);

        return new Form(
            $"Edit {sheets.Called}",
            [
                standingField,
                new Field(FaultLabel, fault ?? "")
                {
                    Form = "why it is left out: misregistration, slur, smudge, crease, stain, other",
                    Known = typed => Fields.Matching([.. own.AllFaults.Select(one => one.Word)], typed),
                    Wrong = typed => own.FaultOf(typed) is null ? $"“{typed}” is no fault this register knows: write {string.Join(", ", own.AllFaults.Select(one => one.Word))}." : null,
                },
                new Field(FaultNote, note ?? "") { Form = "more about the fault" },
                new Field(Condition, condition ?? "")
                {
                    IsNeeded = condition is not null,
                    Form = "how the sheet is now, in words: lower left corner bent",
                },
            ],
            form => SaveAsync(desk, sheets, form))
        {
            Name = "edit",
            About = [sheets.About, "A sheet that bears a number stays a kept sheet. A fault is said of a sheet that is left out."],
            OwnEachTime = [FaultNote, Condition],
        };
    }

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form)
    {
        var isSorted = new[] { Standing, FaultLabel, FaultNote }.Any(label => form.FieldOf(label) is var field && field.Text.Trim() != field.AsGiven);
        var condition = form[Condition] == sheets.Same(sheet => sheet.Condition).Value ? null : form[Condition];
        List<string> said = [];

        if (isSorted && form[Standing] is { } standing && standing != AsItIs)
        {
            var isOut = standing == LeftOut;
            var (fault, note) = isOut ? (form[FaultLabel], form[FaultNote]) : (null, null);
            said.Add(await desk.Store.Do(register => EditionSaid.Sorted(register.SortPulls.Run(sheets.ByCode, standing, fault, note, sheets.AsSeen), standing)));
        }

        if (condition is not null)
        {
            said.Add(await desk.Store.Do(register => Described(register, sheets, condition, said.Count > 0)));
        }

        return new Saved(said.Count == 0 ? "Nothing was changed: that is recorded already." : string.Join(' ', said));
    }

    private static string Described(Register register, SheetsAtHand sheets, string condition, bool isSorted)
    {
        // Sorting has just written these sheets, so what was seen before it says nothing any more.
        var count = register.InscribeImpressions.Run(sheets.ByCode, new WhatStandsOnIt { Condition = condition }, isSorted ? null : sheets.AsSeen);

        return $"{Counted.Sheets(count)}: condition recorded.";
    }
}
