using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Tests.Bench;

/// <summary>A linocut on the bench, brought as far as a test wants it.</summary>
internal static class OnTheBench
{
    public static ImpressionChoice Pile(string places) => new() { Work = 1, Pile = places };

    /// <summary>“Harbour” by Mira Tolland, a block, and a run of 12 sheets started, of which 8 lie in the pile, one of them held out.</summary>
    public static async Task<TestHouse> WithPullsAsync()
    {
        var house = await TestHouse.OnEmptyAsync();
        var register = house.Register;
        register.RecordPerson.Run(new NewPerson { Name = "Mira Tolland" });
        register.RecordWork.Run(new NewWork { Title = "Harbour", Year = RecordedDate.Read("2026"), Technique = "linocut" }, ["Mira Tolland"]);
        register.RecordMatrix.Run(1, "block", "linoleum", "no", RecordedDate.Read("2026-01"));
        register.RecordPrintRun.Run(1, new NewPrintRun
        {
            Paper = "Hosho 60 g", Printed = RecordedDate.Read("2026-02"), Started = 12, Spoiled = 3, Unused = 1, HeldOut = 1,
            ImageHeight = 300_000, ImageWidth = 225_000, SheetHeight = 400_000, SheetWidth = 300_000,
        });

        return house;
    }

    /// <summary>The same, five sheets kept, one spare, one left out for a slur.</summary>
    public static async Task<TestHouse> WithKeptAsync()
    {
        var house = await WithPullsAsync();
        house.Register.SortPulls.Run(Pile("1-5"), "kept");
        house.Register.SortPulls.Run(Pile("6"), "spare");
        house.Register.SortPulls.Run(Pile("7"), "left-out", "slur");

        return house;
    }

    /// <summary>The same, declared 1-4 and A/P I-I, every number given.</summary>
    public static async Task<TestHouse> WithNumbersAsync()
    {
        var house = await WithKeptAsync();
        var edition = house.Register.DeclareEdition.Run(1, new NewEdition { Numberings = [NumberingPlan.Read("1-4"), NumberingPlan.Read("A/P I-I")] });
        house.Register.GiveNumbers.AsPiled(edition, null, null);
        house.Register.GiveNumbers.AsPiled(edition, "A/P I-I", null);

        return house;
    }
}
