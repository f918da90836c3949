using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Demo;

/// <summary>
/// The demo's story, told through the use cases: a small studio on the coast, its printmaker who teaches, a reduction linocut, an
/// etching, an open edition, and the prints of three pupils. Everyone in it is invented.
/// </summary>
internal sealed class CoastalStudio(Register register, ScenarioClock clock)
{
    public const string Maker = "Mira Tolland";
    public const string Reduction = "Harbour at Low Water";
    public const string Gallery = "Quay Gallery";

    private const string Drawer1 = "Studio › Plan chest › Drawer 1";
    private const string Drawer2 = "Studio › Plan chest › Drawer 2";
    private const string Board = "Westhaven School › Print room › Display board";

    public void Tell()
    {
        PeopleAndPlaces();
        HarbourAtLowWater();
        GullRock();
        TideTable();
        Pupils();
        AYearOfSelling();
    }

    private static RecordedDate On(string date) => RecordedDate.Read(date);

    private static long Micrometres(int millimetres) => millimetres * 1_000L;

    private void PeopleAndPlaces()
    {
        register.RecordPerson.Run(new NewPerson { Name = Maker, Contact = "studio@saltmarsh.example" });
        register.RecordPerson.Run(new NewPerson { Name = "Joost Averink", Note = "prints with us on Fridays" });
        register.RecordPerson.Run(new NewPerson { Name = "Saltmarsh Print Studio", IsOrganisation = true });
        register.RecordPerson.Run(new NewPerson { Name = Gallery, IsOrganisation = true });
        register.RecordPerson.Run(new NewPerson { Name = "Inés Vargøy", PublicName = "wording", Wording = "private collection" });
        register.RecordPerson.Run(new NewPerson { Name = "Westhaven School", IsOrganisation = true });
        register.RecordPerson.Run(new NewPerson { Name = "Elsie Marrowby", IsProtected = true, PublicName = "given", ClassCode = "8B-04" });
        register.RecordPerson.Run(new NewPerson { Name = "Tam Birdseye", IsProtected = true, PublicName = "class-code", ClassCode = "8B-11" });
        register.RecordPerson.Run(new NewPerson { Name = "Noor Kessanly", IsProtected = true, PublicName = "unnamed", ClassCode = "8B-17" });
        register.RecordPlace.Run(Drawer1);
        register.RecordPlace.Run(Drawer2);
        register.RecordPlace.Run(Board);
    }

    /// <summary>A reduction linocut in four colours: 24 sheets started, 12 + 2 A/P in the end, the block cut away.</summary>
    private void HarbourAtLowWater()
    {
        clock.OnTo(2026, 2, 16);
        var work = register.RecordWork.Run(
            new NewWork { Title = Reduction, Year = On("2026"), Technique = "reduction linocut in four colours" },
            [Maker],
            [new Contributor("workshop", "Saltmarsh Print Studio")]);
        register.RecordMatrix.Run(work, "block", "linoleum", "yes", On("2026-01"));
        register.RecordPrintRun.Run(
            work,
            new NewPrintRun
            {
                Paper = "Japanese kozo, 70 g/m²",
                Printed = On("2026-02-02/2026-02-14"),
                Started = 24,
                Spoiled = 3,
                Unused = 1,
                HeldOut = 4,
                ImageHeight = Micrometres(225),
                ImageWidth = Micrometres(300),
                SheetHeight = Micrometres(310),
                SheetWidth = Micrometres(390),
            },
            Drawer1);
        register.StateMatrixFate.Run(work, null, "cut-away-in-printing", On("2026-02-14"), "the last colour left only the masts standing", correct: false);

        register.SortPulls.Run(Pile(work, "1-14"), "kept");
        register.SortPulls.Run(Pile(work, "15"), "left-out", "misregistration", "the third colour lies 2 mm high");
        register.SortPulls.Run(Pile(work, "16"), "left-out", "smudge");

        clock.OnTo(2026, 2, 20);
        var edition = Declare(work, "limited", "2026-02-20", "1-12", "A/P I-II", "progressive proof 1-4");
        register.GiveNumbers.AsPiled(edition, "1-12", null);
        register.GiveNumbers.AsPiled(edition, "A/P I-II", null);
        register.GiveNumbers.ByHand(edition, Pile(work, "17-20"), "progressive proof 1-4");
        Sign(edition, "1-12, A/P I-II", "M. Tolland");
        Spell(edition, "progressive proof 1-4");
        register.PriceImpressions.Run(Numbers(edition, "1-12"), 18_000, "EUR", null);
        register.CloseEdition.Run(edition, On("2026-02-20"));
    }

    /// <summary>An etching with a bon à tirer; the plate is not yet cancelled and the edition not closed.</summary>
    private void GullRock()
    {
        clock.OnTo(2026, 3, 9);
        var work = register.RecordWork.Run(
            new NewWork { Title = "Gull Rock", Year = On("2025"), Technique = "etching with aquatint" }, [Maker], [new Contributor("printer", "Joost Averink")]);
        register.RecordMatrix.Run(work, "plate", "copper", "no", On("2025"));
        register.RecordPrintRun.Run(
            work,
            new NewPrintRun
            {
                Paper = "cotton rag, 250 g/m²",
                State = "II",
                Printed = On("2026-03-06"),
                Started = 12,
                Spoiled = 1,
                HeldOut = 1,
                ImageHeight = Micrometres(148),
                ImageWidth = Micrometres(198),
                SheetHeight = Micrometres(280),
                SheetWidth = Micrometres(380),
            },
            Drawer2);
        register.SortPulls.Run(Pile(work, "1-9"), "kept");
        register.SortPulls.Run(Pile(work, "10"), "spare");

        var edition = Declare(work, "limited", "2026-03-09", "1-8", "A/P I-I", "B.A.T.");
        register.GiveNumbers.ByHand(edition, Pile(work, "11"), "B.A.T.");
        register.GiveNumbers.AsPiled(edition, "1-8", null);
        register.GiveNumbers.AsPiled(edition, "A/P I-I", null);
        Sign(edition, "1-8, A/P I, B.A.T.", "Mira Tolland");
        register.PriceImpressions.Run(Numbers(edition, "1-8"), 14_000, "EUR", null);
    }

    /// <summary>A small relief print in an open edition, numbered as it is printed, without a size.</summary>
    private void TideTable()
    {
        clock.OnTo(2026, 4, 2);
        var work = register.RecordWork.Run(new NewWork { Title = "Tide Table", Year = On("2026"), Technique = "woodcut" }, [Maker]);
        register.RecordMatrix.Run(work, "block", "birch plywood", "no", On("2026-03"));
        register.RecordPrintRun.Run(
            work,
            new NewPrintRun { Paper = "card, 300 g/m²", Printed = On("2026-04-01"), Started = 10, ImageHeight = Micrometres(100), ImageWidth = Micrometres(70), SheetHeight = Micrometres(148), SheetWidth = Micrometres(105) },
            Drawer2);
        register.SortPulls.Run(Pile(work, "1-10"), "kept");
        var edition = Declare(work, "open", "2026-04-02", "open");
        register.GiveNumbers.AsPiled(edition, null, null);
        Sign(edition, "1-10", "MT");
        register.PriceImpressions.Run(Numbers(edition, "1-10"), 2_500, "EUR", null);
    }

    private void Pupils()
    {
        clock.OnTo(2026, 5, 18);
        PupilsPrint("Elsie Marrowby", "My Street in Rain", "collagraph", "plate", "card", 3);
        PupilsPrint("Tam Birdseye", "Heron", "drypoint", "plate", "acrylic sheet", 2);
        PupilsPrint("Noor Kessanly", "Letters I Like", "stencil print", "stencil", "film", 3);
    }

    private void PupilsPrint(string pupil, string title, string technique, string what, string material, int sheets)
    {
        var work = register.RecordWork.Run(new NewWork { Title = title, Year = On("2026"), Technique = technique }, [pupil], [new Contributor("teacher", Maker)]);
        register.RecordMatrix.Run(work, what, material, "no", On("2026-05"));
        register.RecordPrintRun.Run(
            work,
            new NewPrintRun { Paper = "cartridge, 160 g/m²", Printed = On("2026-05"), Started = sheets + 1, Spoiled = 1, ImageHeight = Micrometres(150), ImageWidth = Micrometres(100), SheetHeight = Micrometres(297), SheetWidth = Micrometres(210) },
            Board);
        register.SortPulls.Run(Pile(work, FormattableString.Invariant($"1-{sheets}")), "kept");
        var edition = Declare(work, "limited", "2026-05-18", FormattableString.Invariant($"1-{sheets}"));
        register.GiveNumbers.AsPiled(edition, null, null);
        Spell(edition, FormattableString.Invariant($"1-{sheets}"));
        register.PriceImpressions.Run(Numbers(edition, FormattableString.Invariant($"1-{sheets}")), null, null, "no");
    }

    private void AYearOfSelling()
    {
        var harbour = register.LookAround.Works().First(work => work.Title == Reduction).Editions[0].Id;

        clock.OnTo(2026, 6, 6);
        register.IssueCertificates.Run(Numbers(harbour, "1, 3"));
        register.SellImpressions.Run(Numbers(harbour, "3"), new SalePeople("Inés Vargøy"), new Sale { Price = 18_000, Currency = "EUR", Collected = true });
        register.Consign.Run(Numbers(harbour, "5-8"), Gallery, until: On("2026-12-31"), rate: 4_000, note: "summer hang");

        clock.OnTo(2026, 8, 22);
        register.SellImpressions.Run(Numbers(harbour, "6"), new SalePeople(null), new Sale { Price = 21_000, Currency = "EUR", Collected = true });

        clock.OnTo(2026, 9, 30);
        register.ReturnImpressions.Run(Numbers(harbour, "8"), Gallery, Drawer1);
    }

    private long Declare(long work, string kind, string date, params string[] numberings) => register.DeclareEdition.Run(
        work, new NewEdition { Kind = kind, Declared = On(date), Numberings = [.. numberings.Select(NumberingPlan.Read)] });

    private void Sign(long edition, string numbers, string signature) =>
        register.InscribeImpressions.Run(Numbers(edition, numbers), new WhatStandsOnIt { AsSpelled = true, Signature = signature });

    private void Spell(long edition, string numbers) =>
        register.InscribeImpressions.Run(Numbers(edition, numbers), new WhatStandsOnIt { AsSpelled = true });

    private static ImpressionChoice Pile(long work, string pile) => new() { Work = work, Pile = pile };

    private static ImpressionChoice Numbers(long edition, string numbers) => new() { Edition = edition, Sheets = numbers };
}
