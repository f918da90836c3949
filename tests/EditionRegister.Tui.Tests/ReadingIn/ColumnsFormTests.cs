namespace EditionRegister.Tui.Tests.ReadingIn;

/// <summary>Saying what the columns of a file mean.</summary>
public sealed class ColumnsFormTests : IDisposable
{
    private const string OddHeadings = "Wer,Was,Nummer im Stoß\r\nAda Brandt,Dyke,1/8\r\n";

    private readonly FilesToRead _files = new();

    public void Dispose() => _files.Dispose();

    [Fact]
    public async Task A_column_is_what_it_is_said_to_be()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await _files.AskAsync(house, OddHeadings);
        await house.PressAsync("e");

        await house.FillAsync(("Wer", "maker"), ("Was", "title"), ("Nummer im Stoß", "number"));
        Assert.Equal(3, house.Screen().Split('\n').Count(line => line.EndsWith("you said so", StringComparison.Ordinal)));
        await house.PressAsync("y");

        var work = Assert.Single(house.Register.LookAround.Works());
        Assert.Equal(("Dyke", "Ada Brandt", "1/8"), (work.Title, work.ShownMaker, work.Impressions[0].Pencilled));
    }

    [Fact]
    public async Task A_guess_is_taken_back_to_a_note()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await _files.AskAsync(house, "title,maker,by\r\nDyke,Ada Brandt,me\r\n");
        await house.PressAsync("e");

        await house.FillAsync(("maker", ""), ("by", "maker"));

        Assert.Contains(house.Screen().Split('\n'), line => line.StartsWith("maker         a note, kept as written  you said so", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Two_columns_cannot_be_the_same_and_the_form_stays()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await _files.AskAsync(house, OddHeadings);
        await house.PressAsync("e");

        await house.FillAsync(("Wer", "maker"), ("Was", "maker"));

        Assert.Equal("Wer and Was cannot both be the maker. Nothing was read in. Take one of them for another column, or for nothing, which keeps it as a note.", house.Form.Problem);
    }

    [Fact]
    public async Task A_name_that_is_no_column_is_told_with_those_there_are()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await _files.AskAsync(house, OddHeadings);
        await house.PressAsync("e");

        await house.FillAsync(("Wer", "artist"));

        Assert.StartsWith("The register has no column “artist”. Its columns are code, maker, title,", house.Form.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_names_are_gone_through_from_the_one_that_stands_there()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await _files.AskAsync(house, "Artist,Title\r\nAda Brandt,Dyke\r\n");
        await house.PressAsync("e");

        house.Form.TakeSuggestion();
        house.Form.TakeSuggestion();

        Assert.Equal("year", house.Form.FieldOf("Artist").Text);
    }
}
