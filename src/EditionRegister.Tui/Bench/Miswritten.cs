using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Bench;

/// <summary>What really stands on a sheet, where the pencil slipped.</summary>
internal static class Miswritten
{
    private const string Number = "Number as it stands there";
    private const string Title = "Title as it stands there";
    private const string Signed = "Signed by hand";
    private const string Signature = "Signature";

    /// <summary>Asks which of the two it is: what stands on the sheet is to be recorded, or the pencil itself was changed.</summary>
    public static Choice Asked(Desk desk, Impression sheet, OwnWords own, PencilText pencil, Func<Impression, string, Undoing> recorded) => new($"What about {sheet.ShownCode}?",
    [
        Choosable.Opens("r", "the slip stands there: record what is on the sheet", () => Form(desk, sheet, own, pencil, recorded)),
        Choosable.Opens("a", "it was put right: record the change on the sheet", () => AlterForm.Of(desk, sheet, own, pencil.Number, then: () => { })),
    ]);

    /// <param name="desk">The desk.</param>
    /// <param name="sheet">The sheet as it was on record.</param>
    /// <param name="own">The register's own kinds.</param>
    /// <param name="pencil">What should stand there.</param>
    /// <param name="recorded">Takes up that it is recorded, with the sentence; answers how it is undone.</param>
    public static Form Form(Desk desk, Impression sheet, OwnWords own, PencilText pencil, Func<Impression, string, Undoing> recorded) => new($"What stands on {sheet.ShownCode}", [
        new Field(Number, pencil.Number) { IsNeeded = true, Form = "letter by letter, also where it is wrong: 4/21", Reads = typed => InscriptionSaid.OfNumber(typed, own) },
        new Field(Title, pencil.Title) { Form = "letter by letter" },
        Field.OneOf(Signed, ["yes", "no", "unknown"]),
        new Field(Signature, pencil.Signature) { Form = "letter by letter; left out where it is not signed" },
    ], async form =>
    {
        WhatStandsOnIt what = new()
        {
            Pencilled = form[Number],
            Titled = form[Title],
            Signed = form[Signed],
            Signature = form[Signed] == "no" ? null : form[Signature],
        };
        await desk.Store.Do(register => register.InscribeImpressions.Run(ImpressionChoice.OfCode(sheet.ShownCode), what));
        var said = SheetSaid.Inscribed(1);

        return new Saved(said) { Undo = recorded(sheet, said) };
    })
    {
        Name = "What stands on a sheet",
        OwnEachTime = [Number],
        About = ["The number given stays as it is; what the pencil says is kept beside it, and check tells where the two disagree."],
    };
}
