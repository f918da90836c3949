using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is asked of what stands on sheets: the number, title and signature in pencil, and any other inscription letter by letter.</summary>
internal static class InscribeForm
{
    private const string AsSpelled = "As spelled above";
    private const string Pencilled = "Number";
    private const string Titled = "Title";
    private const string Signed = "Signed by hand";
    private const string Signature = "Signature";
    private const string Other = "Other text on it";
    private const string Side = "Its side";
    private const string Manner = "Its manner";
    private const string Where = "Where it stands";
    private const string AsItIs = "as it is";
    private const string Stays = "as it stands on the sheet; what is recorded can be corrected, not emptied";

    private static readonly string[] Words = ["yes", "no", "unknown"];

    public static Form Of(Desk desk, SheetsAtHand sheets)
    {
        var (titled, signature, signed) = (sheets.Same(sheet => sheet.Titled).Value, sheets.Same(sheet => sheet.Signature).Value, sheets.Same(sheet => sheet.Signed).Value);
        var pencilled = sheets.First.Sheet.Pencilled;

        return new Form(
            $"Inscribe {sheets.Called}",
            [
                Field.YesNo(AsSpelled, sheets.Pairs.All(pair => pair.Sheet.Pencilled is null && pair.Work.NumberingOf(pair.Sheet)?.Spell(pair.Sheet.Number) is not null)),
                .. sheets.IsOne ? [Number(sheets, pencilled)] : (Field[])[],
                new Field(Titled, titled ?? "") { IsNeeded = titled is not null, Form = titled is null ? "as it stands on the sheet" : Stays },
                Words.Contains(signed) ? Field.OneOf(Signed, Words, signed) : Field.OneOf(Signed, [AsItIs, .. Words]),
                new Field(Signature, signature ?? "")
                {
                    IsNeeded = signature is not null,
                    Form = signature is null ? "as it stands on the sheet, such as M. Tolland" : Stays,
                    Known = typed => Fields.Matching(Signatures(sheets), typed),
                },
                Fields.Inscription(Other, sheets.First.Work.OwnWords, "anything else written, stamped or embossed, letter by letter"),
                Field.OneOf(Side, ["front", "back", "unknown"]),
                Field.OneOf(Manner, ["written", "stamped", "embossed", "unknown"]),
                new Field(Where) { Form = "where the other text stands: lower left" },
            ],
            form => SaveAsync(desk, sheets, form))
        {
            Name = "inscribe",
            About = [sheets.About, .. Spelled(sheets)],
            OwnEachTime = [Pencilled, Titled, Other, Where],
        };
    }

    private static Field Number(SheetsAtHand sheets, string? pencilled) => new(Pencilled, pencilled ?? "")
    {
        IsNeeded = pencilled is not null,
        Form = pencilled is null ? "as it stands on the sheet, such as 3/12 or A/P II/V" : Stays,
        Reads = typed => InscriptionSaid.OfNumber(typed, sheets.First.Work.OwnWords),
    };

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form)
    {
        var other = form[Other];
        WhatStandsOnIt what = new()
        {
            AsSpelled = form.IsYes(AsSpelled),
            Pencilled = sheets.IsOne ? Changed(form, Pencilled) : null,
            Titled = Changed(form, Titled),
            Signed = form[Signed] == AsItIs ? null : Changed(form, Signed),
            Signature = Changed(form, Signature),
            Inscription = other,
            Side = form[Side]!,
            Manner = form[Manner]!,
            Position = other is null ? null : form[Where],
        };

        return new Saved(SheetSaid.Inscribed(await desk.Store.Do(register => register.InscribeImpressions.Run(sheets.ByCode, what, sheets.AsSeen))));
    }

    private static string? Changed(Form form, string label) => form.FieldOf(label) is { } field && field.Answer != (field.AsGiven.Length == 0 ? null : field.AsGiven.Trim()) ? field.Answer : null;

    private static IEnumerable<string> Spelled(SheetsAtHand sheets)
    {
        var (first, last) = (Shown(sheets.Pairs[0]), Shown(sheets.Pairs[^1]));

        yield return sheets.IsOne ? $"Spelled: {first}" : $"Spelled: {first}; the last {last}";
    }

    private static string Shown((Domain.Works.Work Work, Impression Sheet) pair)
    {
        var text = PencilText.For(pair.Work, pair.Sheet);
        string[] parts = [text.Number.Length > 0 ? text.Number : "no number yet", text.Title, text.Signature];

        return string.Join("  ·  ", parts.Where(part => part.Length > 0));
    }

    private static List<string> Signatures(SheetsAtHand sheets) =>
        [.. sheets.Works.SelectMany(chosen => chosen.Work.Impressions).Select(sheet => sheet.Signature).Concat(sheets.Works.SelectMany(chosen => chosen.Work.Makers).Select(maker => maker.Name)).OfType<string>().Distinct()];
}
