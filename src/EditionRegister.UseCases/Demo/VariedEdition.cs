using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Demo;

/// <summary>A varied edition, each of its six impressions wiped and inked another way, and a monotype with its ghost. Everyone in it is invented.</summary>
internal sealed class VariedEdition(Register register, ScenarioClock clock)
{
    public const string Varied = "Six Weathers";
    public const string Monotype = "Undertow";

    private const string Drawer2 = "Studio › Plan chest › Drawer 2";

    /// <summary>How each of the six differs; the two of fog are alike, and may be.</summary>
    public static IReadOnlyList<string> Variants { get; } =
        ["dawn: ochre wiped into grey", "noon: blue, wiped clean", "squall: blue-black, left heavy", "fog: grey, plate tone throughout", "fog: grey, plate tone throughout", "dusk: ochre rolled over blue"];

    public void Tell()
    {
        clock.OnTo(2026, 10, 12);
        SixWeathers();
        Undertow();
    }

    private static RecordedDate On(string date) => RecordedDate.Read(date);

    /// <summary>Seven sheets started and one spoiled: six kept, 1 to 5 for the maker and 6 for the workshop.</summary>
    private void SixWeathers()
    {
        var work = register.RecordWork.Run(
            new NewWork { Title = Varied, Year = On("2026"), Technique = "collagraph, inked and wiped each time anew" }, [CoastalStudio.Maker], [new("workshop", "Saltmarsh Print Studio")]);
        register.RecordMatrix.Run(work, "plate", "card and carborundum", "no", On("2026-09"));
        register.RecordPrintRun.Run(work, Run("2026-10-08/2026-10-09", started: 7, spoiled: 1), Drawer2);
        register.SortPulls.Run(Pile(work, "1-6"), "kept");
        var edition = register.DeclareEdition.Run(work, new NewEdition { Kind = "varied", Rank = "first", Declared = On("2026-10-12"), Numberings = [NumberingPlan.Read("1-6")] });
        register.GiveNumbers.AsPiled(edition, null, null);

        foreach (var same in Variants.Select((variant, i) => (Variant: variant, Number: i + 1)).GroupBy(one => one.Variant))
        {
            register.VarySheets.Run(Numbers(edition, string.Join(", ", same.Select(one => FormattableString.Invariant($"{one.Number}")))), same.Key);
        }

        register.InscribeImpressions.Run(Numbers(edition, "1-6"), new WhatStandsOnIt { AsSpelled = true, Signature = "M. Tolland" });
        register.DivideEdition.Run(edition, "1-5", CoastalStudio.Maker, On("2026-10-01"));
        register.DivideEdition.Run(edition, "6", "Saltmarsh Print Studio", On("2026-10-01"));
        register.PriceImpressions.Run(Numbers(edition, "1-5"), 22_000, "EUR", null);
    }

    /// <summary>Two sheets of one plate, inked once: the print and its ghost, each a unique print of its own.</summary>
    private void Undertow()
    {
        var work = register.RecordWork.Run(new NewWork { Title = Monotype, Year = On("2026"), Technique = "monotype" }, [CoastalStudio.Maker]);
        register.RecordPrintRun.Run(work, Run("2026-10-10", started: 2, spoiled: 0), Drawer2);
        register.SortPulls.Run(Pile(work, "1-2"), "kept");

        foreach (var place in new[] { "1", "2" })
        {
            var edition = register.DeclareEdition.Run(work, new NewEdition { Kind = "unique", Declared = On("2026-10-12"), Numberings = [NumberingPlan.Read("1-1")] });
            register.GiveNumbers.ByHand(edition, Pile(work, place), "1");
            register.InscribeImpressions.Run(Numbers(edition, "1"), new WhatStandsOnIt { AsSpelled = true, Signature = "M. Tolland" });
        }

        var sheets = register.LookAround.Work(work).Impressions;
        register.LinkGhost.Run(sheets[1].ShownCode, sheets[0].ShownCode, On("2026-10-10"), "pulled at once, without inking again");
    }

    private static NewPrintRun Run(string printed, int started, int spoiled) => new()
    {
        Paper = "cotton rag, 250 g/m²",
        Printed = On(printed),
        Started = started,
        Spoiled = spoiled,
        ImageHeight = 240_000,
        ImageWidth = 180_000,
        SheetHeight = 380_000,
        SheetWidth = 280_000,
    };

    private static ImpressionChoice Pile(long work, string pile) => new() { Work = work, Pile = pile };

    private static ImpressionChoice Numbers(long edition, string numbers) => new() { Edition = edition, Sheets = numbers };
}
