using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Tui.Tests.Bench;

/// <summary>The signing, sheet by sheet.</summary>
public sealed class SigningPageTests
{
    [Fact]
    public async Task The_next_sheet_is_drawn_as_it_is_to_be_pencilled()
    {
        await using var house = await SigningAsync();

        await house.PressAsync("y");

        BenchScreens.Are(house, "signing");
        Assert.Equal(["yes", "no", "no", "no", "no"], Signed(house));
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task A_skipped_sheet_comes_again_at_the_end_and_an_unsigned_one_does_not()
    {
        await using var house = await SigningAsync();

        await house.PressAsync("s", "n", "y", "y", "y");
        Assert.Contains("Next sheet is 1/4. Signed?", house.Screen(), StringComparison.Ordinal);
        await house.PressAsync("y");

        Assert.Equal(["yes", "no", "yes", "yes", "yes"], Signed(house));
        Assert.Contains("None is left in this session.", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sheet_signed_by_a_slip_of_the_finger_is_put_back_to_what_was_on_record()
    {
        await using var house = await SigningAsync();
        await house.PressAsync("y", "Backspace");
        Assert.Contains("1/4 is signed: n takes it back, y goes on.", house.Screen(), StringComparison.Ordinal);

        await house.PressAsync("n");

        Assert.Equal("1/4 is not signed: the record is as it was before.", house.Message);
        Assert.Equal(new PencilOnRecord(null, null, "no", null), PencilOnRecord.Of(house.Register.LookAround.Work(1).Impressions[0]));
    }

    [Fact]
    public async Task Undo_takes_the_signature_back_and_the_sheet_comes_again()
    {
        await using var house = await SigningAsync();
        await house.PressAsync("y", "y");

        await house.PressAsync("u");

        Assert.Equal(["yes", "no", "no", "no", "no"], Signed(house));
        Assert.Contains("Next sheet is 2/4. Signed?", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_miswritten_number_is_kept_as_it_stands_beside_the_one_given()
    {
        await using var house = await SigningAsync();

        await house.PressAsync("m", "r");
        await house.FillAsync(("Number as it stands there", "1/14"));

        var sheet = house.Register.LookAround.Work(1).Impressions[0];
        Assert.Equal("1 sheet inscribed.", house.Message);
        Assert.Equal(("1/14", 1, "yes", "Mira Tolland"), (sheet.Pencilled, sheet.Number, sheet.Signed, sheet.Signature));
        Assert.Contains("Next sheet is 2/4. Signed?", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_signature_reads_as_it_is_written()
    {
        await using var house = await SigningAsync();

        await house.PressAsync("e");
        await house.FillAsync(("Signature", "M. Tolland"));
        await house.PressAsync("y");

        Assert.Equal("M. Tolland", house.Register.LookAround.Work(1).Impressions[0].Signature);
    }

    [Fact]
    public async Task A_number_another_window_took_back_is_not_signed()
    {
        await using var house = await SigningAsync();
        house.Register.GiveNumbers.TakeBack(OnTheBench.Pile("1"));

        await house.PressAsync("y");

        Assert.Equal("Someone changed this sheet meanwhile. Nothing was changed; it is shown as it stands now, so look again.", house.Message);
        Assert.Equal("no", Signed(house)[0]);
        Assert.Contains("Next sheet is 2/4. Signed?", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Numbers_are_given_in_the_order_laid_and_all_or_none_of_them()
    {
        await using var house = await OnTheBench.WithKeptAsync();
        house.Register.DeclareEdition.Run(1, new NewEdition { Numberings = [NumberingPlan.Read("1-4"), NumberingPlan.Read("A/P I-I")] });
        await house.PressAsync("2", "Enter", "g");

        await house.FillAsync(("1/4 to 4/4", "5, 1-3"), ("A/P I/I", "3"));
        Assert.StartsWith($"{house.Register.LookAround.Work(1).Impressions[2].ShownCode} was chosen twice.", house.Form.Problem, StringComparison.Ordinal);
        Assert.All(house.Register.LookAround.Work(1).Impressions, sheet => Assert.Null(sheet.Number));
        await house.FillAsync(("A/P I/I", "8"));

        Assert.Equal("5 numbers of edition 1 of “Harbour” given.", house.Message);
        Assert.Equal([2, 3, 4, null, 1, null, null, 1], house.Register.LookAround.Work(1).Impressions.Select(sheet => sheet.Number));
        await house.PressAsync("u");
        Assert.Equal("The number of 5 sheets taken back.", house.Message);
    }

    [Fact]
    public async Task A_slip_put_right_on_the_sheet_is_another_record_and_the_sheet_waits_to_be_signed()
    {
        await using var house = await SigningAsync();

        await house.PressAsync("m");
        var choice = Assert.IsType<EditionRegister.Tui.Asking.Choice>(house.House.Asking);
        Assert.Equal(
            "r the slip stands there: record what is on the sheet, a it was put right: record the change on the sheet",
            string.Join(", ", choice.Among.Select(one => $"{one.Key} {one.Shown}")));
        await house.PressAsync("a");
        await house.FillAsync(("Stood there", "1/5"), ("Why", "slip of the pencil"));

        var sheet = house.Register.LookAround.Work(1).Impressions[0];
        Assert.Equal($"The number on {sheet.ShownCode} was “1/5” and is “1/4”, 2027-03-01: changed on the sheet itself.", house.Message);
        Assert.Equal(("1/4", "no", "1/5"), (sheet.Pencilled, sheet.Signed, sheet.Changes.Single().Was));
        await house.PressAsync("y");
        Assert.Equal(["yes", "no", "no", "no", "no"], Signed(house));
        Assert.Empty(house.Bugs);
    }

    private static async Task<TestHouse> SigningAsync()
    {
        var house = await OnTheBench.WithNumbersAsync();
        await house.PressAsync("2", "Enter", "g");

        return house;
    }

    private static IReadOnlyList<string> Signed(TestHouse house) => [.. house.Register.LookAround.Work(1).Impressions.Where(sheet => sheet.Number is not null).Select(sheet => sheet.Signed)];
}
