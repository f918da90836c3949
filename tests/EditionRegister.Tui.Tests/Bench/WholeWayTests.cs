using EditionRegister.Domain.Integrity;

namespace EditionRegister.Tui.Tests.Bench;

/// <summary>From an empty register to the last signature, by keys and forms alone.</summary>
public sealed class WholeWayTests
{
    [Fact]
    public async Task A_print_comes_from_the_first_key_to_the_last_signature()
    {
        await using var house = await TestHouse.OnEmptyAsync();

        await house.PressAsync("2");
        BenchScreens.Are(house, "bench-empty");
        await house.PressAsync("n");
        await house.FillAsync(("Title", "Harbour"), ("Makers", "Mira Tolland"), ("The makers are", "new"), ("Year", "2026"), ("Technique", "linocut"));
        Assert.Equal("Work 1 recorded: “Harbour”, Mira Tolland.", house.Message);
        BenchScreens.Are(house, "work-new");
        await house.PressAsync("b");
        await house.FillAsync(("What it is", "block"), ("Material", "linoleum"), ("Reduction", "yes"), ("Made", "2026-01"));
        Assert.Equal($"Block 1 of “Harbour” recorded, a reduction; its code is {house.Register.LookAround.Work(1).Matrices[0].ShownCode}.", house.Message);
        await house.PressAsync("n");
        await house.FillAsync(("Sheets started", "6"), ("Spoiled", "1"), ("Unused", "1"), ("Paper", "Hosho 60 g"), ("Image size", "300 x 225"), ("Where the pile lies", "Studio › Drawer 1"), ("That place is", "new"));
        Assert.Equal("Print run 1 of “Harbour” recorded: 6 started = 1 unused + 1 spoiled + 4 in the pile.", house.Message);
        await house.PressAsync("o", "k", "k", "k", "x", "u");
        Assert.Equal("1 sheet left out.", house.Message);
        await house.PressAsync("Esc", "a");
        await house.FillAsync(("Numberings", "2, A/P I-I"));
        Assert.Equal("Nothing is written yet.", house.Message);
        Assert.Empty(house.Register.LookAround.Work(1).Editions);
        await house.PressAsync("y");
        Assert.Equal("Edition 1 of “Harbour” declared: 1/2 to 2/2; A/P I/I.", house.Message);
        await house.PressAsync("g");
        Assert.Equal("1-2", house.Form["1/2 to 2/2"]);
        Assert.Equal("3", house.Form["A/P I/I"]);
        await house.FillAsync();
        Assert.Equal("3 numbers of edition 1 of “Harbour” given.", house.Message);
        await house.PressAsync("y", "y", "y");
        Assert.Equal("1 sheet inscribed.", house.Message);
        BenchScreens.Are(house, "signing-done");
        await house.PressAsync("Esc");
        BenchScreens.Are(house, "work-signed");
        await house.PressAsync("Esc");
        BenchScreens.Are(house, "bench-signed");

        Assert.Equal(
            ["1/2 Harbour Mira Tolland yes", "2/2 Harbour Mira Tolland yes", "A/P I/I Harbour Mira Tolland yes", "   no"],
            house.Register.LookAround.Work(1).Impressions.Select(sheet => $"{sheet.Pencilled} {sheet.Titled} {sheet.Signature} {sheet.Signed}"));
        Assert.DoesNotContain(house.Register.CheckRegister.Run(), finding => finding.Severity == Severity.Contradiction);
        Assert.Empty(house.Bugs);
    }
}
