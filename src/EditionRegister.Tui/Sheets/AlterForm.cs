using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is asked where something was changed on the sheet itself: what stood there, what stands there now, why and when.</summary>
internal static class AlterForm
{
    private const string What = "What was altered";
    private const string Was = "Stood there";
    private const string Became = "Stands there now";
    private const string Reason = "Why";
    private const string Date = "Date";

    /// <exception cref="Domain.RefusedException">one-sheet-only.</exception>
    public static Form Of(Desk desk, SheetsAtHand sheets) => sheets.IsOne
        ? Of(desk, sheets.First.Sheet, sheets.First.Work.OwnWords, became: null, then: () => { })
        : throw ImpressionRefusals.OneAtATime("What was altered on a sheet");

    /// <param name="desk">The desk.</param>
    /// <param name="sheet">As it is on record.</param>
    /// <param name="own">The register's own kinds.</param>
    /// <param name="became">What its number should be, where that is what was put right; null leaves it to be typed.</param>
    /// <param name="then">Told once it is recorded.</param>
    public static Form Of(Desk desk, Impression sheet, OwnWords own, string? became, Action then)
    {
        var what = Field.OneOf(What, Alteration.Whats);

        return new Form($"Changed on {sheet.ShownCode} itself",
        [
            what,
            new Field(Was) { Form = "letter by letter; empty takes what is on record" },
            new Field(Became, became ?? "") { Form = "letter by letter; empty where it was rubbed out", Reads = typed => Read(what.Text, typed, own) },
            new Field(Reason) { Form = "such as: numbered twice" },
            Fields.Today(Date, desk.Today),
        ],
        form => SaveAsync(desk, sheet, form, then))
        {
            Name = "alter",
            About = [OnRecord(sheet), "This says that the pencil itself was changed. Where only the record was mistyped, i corrects the record and the sheet stays as it is."],
            OwnEachTime = [Was, Became, Reason],
        };
    }

    private static string? Read(string what, string typed, OwnWords own) => what switch
    {
        "number" => InscriptionSaid.OfNumber(typed, own),
        "inscription" => InscriptionSaid.OfTyped(typed, own),
        _ => null,
    };

    private static async Task<Saved> SaveAsync(Desk desk, Impression sheet, Form form, Action then)
    {
        Alteration alteration = new() { What = form[What]!, Was = form[Was], Became = form[Became], Reason = form[Reason], Changed = DayOf.Deed(desk, form[Date]) };
        var now = await desk.Store.Do(register =>
        {
            register.AlterSheet.Run(sheet.ShownCode, alteration);

            return register.LookAround.Impression(sheet.ShownCode).Impression;
        });
        then();

        return new Saved(SortingSaid.Altered(now, now.Changes[^1]))
        {
            Undo = new Undoing("the change on the sheet", async () => SortingSaid.AlterationTakenBack(await desk.Store.Do(register =>
            {
                register.AlterSheet.TakeBack(sheet.ShownCode);

                return sheet;
            }))),
        };
    }

    private static string OnRecord(Impression sheet)
    {
        string[] parts =
        [
            $"number {Shown(sheet.Pencilled)}", $"title {Shown(sheet.Titled)}", $"signature {Shown(sheet.Signature)}",
            .. sheet.Inscriptions.Select(inscription => $"inscription {Shown(inscription.Text)}"),
        ];

        return $"On record: {string.Join(", ", parts)}.";
    }

    private static string Shown(string? text) => text is null ? "none" : $"“{text}”";
}
