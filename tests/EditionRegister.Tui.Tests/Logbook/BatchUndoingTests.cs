using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Tests.Logbook;

/// <summary>A file that was read in, undone from the logbook.</summary>
public sealed class BatchUndoingTests
{
    [Fact]
    public async Task A_whole_batch_is_undone_after_saying_what_it_was()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.ReadInList();
        await house.EnterLogbookAsync();

        await house.PressAsync("b");
        Assert.Equal("Undo batch 1, all 3 entries of it?", house.Question.Asked);
        Assert.Equal(
            """
            It was read in on 2027-03-01, and wrote of:
              batch 1, the file “list.csv”
              Mira Tolland
            """,
            string.Join('\n', house.Question.Shown.Take(3)));
        await house.TurnAsync("y");

        Assert.Equal("Batch 1 undone: 2 impressions taken out again; their codes stay given.", house.Message);
        Assert.Empty(house.Register.LookAround.Works());
        await house.TurnAsync("End", "Up");
        Assert.DoesNotContain(house.House.Page.Keys, key => key.Key == "b");
    }

    [Fact]
    public async Task Esc_leaves_the_batch_as_it_is()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.ReadInList();
        await house.EnterLogbookAsync();

        await house.TurnAsync("b", "Esc");

        Assert.Equal("Nothing was changed.", house.Message);
        Assert.Single(house.Register.LookAround.Works());
    }

    [Fact]
    public async Task A_batch_that_was_built_on_is_refused_with_what_was_built()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.ReadInList();
        house.Register.RecordPlace.Run("Studio");
        house.Register.PutAway.Run(new ImpressionChoice { All = true }, "Studio");
        await house.EnterLogbookAsync();

        await house.TurnAsync("Down", "Down", "b", "y");

        var code = house.Register.LookAround.Works().Single().Impressions[0].ShownCode;
        Assert.Equal($"Batch 1 cannot be undone: something was built on it since ({code}). Nothing was changed. Put single things right instead.", house.Message);
        Assert.Single(house.Register.LookAround.Works());
    }

    [Fact]
    public async Task Entries_that_no_file_brought_cannot_be_undone_so()
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.EnterLogbookAsync();

        Assert.DoesNotContain(house.House.Page.Keys, key => key.Key == "b");
    }
}
