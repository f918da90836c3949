using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Moves;

namespace EditionRegister.UseCases.Demo;

/// <summary>
/// An autumn written up on one evening: four prints go into consignment under an agreement, one is kept for a friend who does not come for it, and
/// the gallery sells that one on the printmaker's behalf.
/// </summary>
internal sealed class ConsignmentThatEndsInASale(Register register, ScenarioClock clock)
{
    public const string Title = "Neap Tide";

    /// <summary>In cents; the gallery's share of 37.5 % is no whole number of them.</summary>
    public const long Price = 14_555;

    /// <summary>In hundredths of a per cent.</summary>
    public const int Share = 3_750;

    public void Tell()
    {
        clock.OnTo(2026, 11, 9);
        var work = register.RecordWork.Run(new NewWork { Title = Title, Year = On("2026"), Technique = "linocut" }, [CoastalStudio.Maker]);
        register.RecordMatrix.Run(work, "block", "linoleum", "no", On("2026-09"));
        register.RecordPrintRun.Run(
            work,
            new NewPrintRun { Paper = "cotton rag, 250 g/m²", Printed = On("2026-10-01"), Started = 6, ImageHeight = 120_000, ImageWidth = 180_000, SheetHeight = 250_000, SheetWidth = 320_000 },
            "Studio › Plan chest › Drawer 2");
        register.SortPulls.Run(new ImpressionChoice { Work = work, Pile = "1-6" }, "kept");
        var edition = register.DeclareEdition.Run(work, new NewEdition { Declared = On("2026-10-02"), Numberings = [NumberingPlan.Read("1-6")] });
        register.GiveNumbers.AsPiled(edition, null, null);
        register.InscribeImpressions.Run(Numbers(edition, "1-6"), new WhatStandsOnIt { AsSpelled = true, Signature = "M. Tolland" });

        register.ReserveSheets.Run(Numbers(edition, "3"), "Inés Vargøy", On("2026-10-03"), On("2026-10-20"), "for her sister's birthday");
        register.Consign.Run(Numbers(edition, "1-4"), CoastalStudio.Gallery, On("2026-10-05"), On("2027-02-28"), Share, agreement: "autumn agreement of 2026-10-04");
        register.LiftReservation.Run(Numbers(edition, "3"));
        register.SellImpressions.Run(
            Numbers(edition, "3"), new SalePeople("Joost Averink"), new Sale { Date = On("2026-11-07"), Price = Price, Currency = "EUR", Collected = true });
    }

    private static RecordedDate On(string date) => RecordedDate.Read(date);

    private static ImpressionChoice Numbers(long edition, string numbers) => new() { Edition = edition, Sheets = numbers };
}
