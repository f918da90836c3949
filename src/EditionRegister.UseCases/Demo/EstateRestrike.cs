using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Demo;

/// <summary>
/// The cancelled plate of a printmaker long dead, whose first edition was published elsewhere; the estate has ten printed from it, and says so. Everyone in it is invented.
/// </summary>
internal sealed class EstateRestrike(Register register, ScenarioClock clock)
{
    public const string Title = "The Ferry Steps";
    public const string Maker = "Aldwin Ferrowby";
    public const string Estate = "Estate of Aldwin Ferrowby";

    private const string Drawer2 = "Studio › Plan chest › Drawer 2";

    public void Tell()
    {
        clock.OnTo(2026, 10, 19);
        register.RecordPerson.Run(new NewPerson { Name = Maker, Note = "died in 1979" });
        register.RecordPerson.Run(new NewPerson { Name = Estate, IsOrganisation = true });
        var work = register.RecordWork.Run(
            new NewWork { Title = Title, Year = On("1961"), Technique = "etching" },
            [Maker],
            [new("estate", Estate), new("printer", "Joost Averink"), new("workshop", "Saltmarsh Print Studio")]);
        register.RecordMatrix.Run(work, "plate", "zinc", "no", On("1961"));
        register.StateMatrixFate.Run(work, null, "cancelled", On("1962"), "two lines scored across the lower corner", correct: false);
        register.DeclareEdition.Run(work, new NewEdition
        {
            Extent = "someone-elses",
            Rank = "first",
            Declared = On("1961"),
            Numberings = [NumberingPlan.Read("1-50")],
            Note = "after the publisher's list; none of them is here",
        });
        Restrike(work);
    }

    /// <summary>Twelve sheets started and one spoiled: ten numbered, and a spare.</summary>
    private void Restrike(long work)
    {
        register.RecordPrintRun.Run(
            work,
            new NewPrintRun
            {
                Purpose = "restrike",
                Posthumous = "yes",
                Paper = "cotton rag, 300 g/m²",
                Printed = On("2026-10-15/2026-10-16"),
                Started = 12,
                Spoiled = 1,
                ImageHeight = 160_000,
                ImageWidth = 210_000,
                SheetHeight = 280_000,
                SheetWidth = 380_000,
                Note = "the lines of the cancellation show",
            },
            Drawer2);
        register.SortPulls.Run(Pile(work, "1-10"), "kept");
        register.SortPulls.Run(Pile(work, "11"), "spare");
        var edition = register.DeclareEdition.Run(work, new NewEdition { Rank = "posthumous", Declared = On("2026-10-19"), Numberings = [NumberingPlan.Read("1-10")] });
        register.GiveNumbers.AsPiled(edition, null, null);
        register.InscribeImpressions.Run(new ImpressionChoice { Edition = edition, Sheets = "1-10" }, new WhatStandsOnIt
        {
            AsSpelled = true,
            Inscription = Estate,
            Side = "back",
            Manner = "stamped",
        });
        register.PriceImpressions.Run(new ImpressionChoice { Edition = edition, Sheets = "1-10" }, 12_000, "EUR", null);
        register.IssueCertificates.Run(new ImpressionChoice { Edition = edition, Sheets = "1" });
    }

    private static RecordedDate On(string date) => RecordedDate.Read(date);

    private static ImpressionChoice Pile(long work, string pile) => new() { Work = work, Pile = pile };
}
