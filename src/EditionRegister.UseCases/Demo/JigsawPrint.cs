using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Passes;

namespace EditionRegister.UseCases.Demo;

/// <summary>
/// A print from a key block and a jigsaw block cut apart, its passes recorded one by one: 14 sheets started, 1 unused, 1 spoiled, 1 held out on the way as
/// a progressive proof; 8 numbered and an artist's proof, a spare and a sheet left out.
/// </summary>
internal sealed class JigsawPrint(Register register, ScenarioClock clock)
{
    public const string Title = "Groynes in Fog";

    private const string Shelf = "Studio › Block shelf";

    public void Tell()
    {
        clock.OnTo(2026, 10, 5);
        var work = register.RecordWork.Run(new NewWork { Title = Title, Year = On("2026"), Technique = "linocut from a key block and a jigsaw block" }, [CoastalStudio.Maker]);
        Blocks(work);
        Print(work);
        Edition(work);
    }

    private static RecordedDate On(string date) => RecordedDate.Read(date);

    private static ImpressionChoice Pile(long work, string places) => new() { Work = work, Pile = places };

    /// <summary>The jigsaw block was sawn apart along the tide line, so that each half takes its own ink and both print in one pass.</summary>
    private void Blocks(long work)
    {
        register.RecordPlace.Run(Shelf);

        foreach (var part in new[] { "key", "sea", "sand" })
        {
            register.RecordMatrix.Run(work, new NewMatrix { What = "block", Part = part, Material = "linoleum", Reduction = "no", Made = On("2026-09") }, Shelf);
        }

        register.ReachMatrixState.Run(work, "key", "I", On("2026-09-14"), null);
        register.ReachMatrixState.Run(work, "key", "II", On("2026-09-28"), "fog cleared from between the posts");
    }

    private void Print(long work)
    {
        register.RecordPrintRun.Run(work, new NewPrintRun
        {
            IsUnderWay = true,
            Started = 14,
            Unused = 1,
            Paper = "Japanese kozo, 70 g/m²",
            Printed = On("2026-09-21/2026-09-30"),
            ImageHeight = 180_000,
            ImageWidth = 240_000,
            SheetHeight = 250_000,
            SheetWidth = 320_000,
        });
        register.RecordPass.Run(work, 1, new PassTyped
        {
            Words = new PassWords { Done = On("2026-09-21"), SheetsOut = 12, MakeReady = 2, Note = "both halves inked apart and set together" },
            Matrices = ["sea", "sand"],
            Colours = ["sea grey", "ochre"],
            People = [CoastalStudio.Maker, "Joost Averink"],
            HeldOut = ["progressive=1"],
        });
        register.RecordPass.Run(work, 1, new PassTyped
        {
            Words = new PassWords { Done = On("2026-09-24"), SheetsOut = 11, Manner = "blend" },
            Matrices = ["sea"],
            Colours = ["pale blue=oil ink, half transparent", "grey=oil ink, half transparent"],
            People = [CoastalStudio.Maker],
            Spoiled = ["misregistration=1"],
        });
        register.RecordPass.Run(work, 1, new PassTyped
        {
            Words = new PassWords { Done = On("2026-09-30"), SheetsOut = 11 },
            Matrices = ["key=II"],
            Colours = ["black"],
            People = [CoastalStudio.Maker],
        });
        register.LayPile.Run(work, 1, new NewPile { Ready = On("2026-10-04") }, "Studio › Plan chest › Drawer 2");
    }

    private void Edition(long work)
    {
        register.SortPulls.Run(Pile(work, "1-9"), "kept");
        register.SortPulls.Run(Pile(work, "10"), "spare");
        register.SortPulls.Run(Pile(work, "11"), "left-out", "set-off");
        var edition = register.DeclareEdition.Run(
            work, new NewEdition { Kind = "limited", Declared = On("2026-10-05"), Numberings = [NumberingPlan.Read("1-8"), NumberingPlan.Read("A/P I-I")] });
        register.GiveNumbers.AsPiled(edition, "1-8", null);
        register.GiveNumbers.AsPiled(edition, "A/P I-I", null);
        register.InscribeImpressions.Run(new ImpressionChoice { Edition = edition, Sheets = "1-8, A/P I" }, new WhatStandsOnIt { AsSpelled = true, Signature = "M. Tolland" });
        register.PriceImpressions.Run(new ImpressionChoice { Edition = edition, Sheets = "1-8" }, 12_000, "EUR", null);
    }
}
