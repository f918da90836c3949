using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Stock;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.UseCases.Tests.Stock;

/// <summary>“Harbour”: 1-4 and A/P I lie in Drawer 1 of the studio (see <see cref="SmallEdition"/>).</summary>
public sealed class StockTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public StockTests()
    {
        _register = SmallEdition.Make(_temp.Register);
        _register.RecordPlace.Run("Studio › Drawer 2");
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Nothing_is_changed_by_counting()
    {
        var before = _register.LookAround.Work(1).Impressions.Select(sheet => (sheet.Where, sheet.Whereabouts.Count)).ToList();

        _register.TakeStock.Run(new StockToTake { Place = "Drawer 2" }, Codes(1));

        Assert.Equal(before, _register.LookAround.Work(1).Impressions.Select(sheet => (sheet.Where, sheet.Whereabouts.Count)));
    }

    [Fact]
    public void A_drawer_alone_or_with_what_is_inside_it()
    {
        // Of the five sheets 4 goes to Drawer 2: the studio holds none itself, Drawer 1 four, Drawer 2 one.
        _register.PutAway.Run(SmallEdition.Numbers("4"), "Drawer 2");

        var whole = _register.LookAround.StockTake(_register.TakeStock.Run(new StockToTake { Place = "Studio" }, Codes(1, 2, 3, 4)));
        var alone = _register.LookAround.StockTake(_register.TakeStock.Run(new StockToTake { Place = "Studio", Alone = true }, Codes(4)));

        Assert.Equal((4, 1, 0), (whole.Count("present"), whole.Count("missing"), whole.Count("stranger")));
        Assert.Equal((0, 0, 1), (alone.Count("present"), alone.Count("missing"), alone.Count("stranger")));
        Assert.True(alone.Lines[0].IsOpen);
    }

    [Fact]
    public void Strangers_come_home_each_by_its_own_step()
    {
        _register.PutAway.Run(SmallEdition.Numbers("2"), "Drawer 2", On("2026-02-10"));
        _register.Consign.Run(SmallEdition.Numbers("3"), "Quay Gallery", On("2026-02-10"));
        Lose(4);
        var take = _register.TakeStock.Run(new StockToTake { Place = "Drawer 1", Date = On("2026-02-20") }, Codes(1, 2, 3, 4));

        var settled = _register.SettleStock.Run(take, new StockSettlement { PutStrangersAway = true });

        // 1 is present, A/P I missing; 2, 3 and 4 are strangers: from the drawer below, from the gallery, and from nowhere.
        Assert.Equal(new StockSettled(3, 0, 1), settled);
        Assert.Equal(["put-away", "returned", "found"], new[] { 2, 3, 4 }.Select(number => _register.Sheet(number).Whereabouts[^1].Kind));
        Assert.All(new[] { 2, 3, 4 }, number => Assert.Equal((3L, "2026-02-20"), (_register.Sheet(number).Whereabouts[^1].To.Place + 1, _register.Sheet(number).Whereabouts[^1].Moved.Text)));
        Assert.DoesNotContain(_register.CheckRegister.Run(), finding => finding.Rule != "StockTakesAgree");
    }

    [Fact]
    public void What_moved_on_or_turned_up_later_is_open_no_more()
    {
        var first = _register.TakeStock.Run(new StockToTake { Place = "Drawer 1" }, Codes(1, 2, 3));

        Assert.Equal(2, _register.LookAround.StockTake(first).Open);

        _register.Consign.Run(SmallEdition.Numbers("4"), "Quay Gallery");

        Assert.Equal(1, _register.LookAround.StockTake(first).Open);

        _register.TakeStock.Run(new StockToTake { Place = "Studio" }, ScanList.OfTyped(_register.LookAround.Chosen(SmallEdition.Numbers("A/P I"))[0].Sheets[0].ShownCode));

        Assert.Equal(0, _register.LookAround.StockTake(first).Open);
    }

    [Fact]
    public void Only_the_codes_named_are_settled()
    {
        var take = _register.TakeStock.Run(new StockToTake { Place = "Drawer 1" }, Codes(1, 2, 3));

        var settled = _register.SettleStock.Run(take, new StockSettlement { LoseMissing = true, Only = Codes(4) });

        Assert.Equal(new StockSettled(0, 1, 1), settled);
        Assert.Equal((Position.Unknown, "lost"), (_register.Sheet(4).Where, _register.Sheet(4).Whereabouts[^1].Kind));
    }

    [Fact]
    public void Two_programs_settle_a_stock_take_once()
    {
        var take = _register.TakeStock.Run(new StockToTake { Place = "Drawer 1" }, Codes(1, 2, 3));
        _register.SettleStock.Run(take, new StockSettlement { LoseMissing = true });

        var refused = Assert.Throws<Domain.RefusedException>(() => _register.SettleStock.Run(take, new StockSettlement { LoseMissing = true }));

        Assert.Equal("nothing-to-settle", refused.Name);
    }

    [Fact]
    public void What_is_handed_over_goes_on_its_terms_and_the_rest_stays()
    {
        _register.DeliverSheets.Run(
            new SheetsToDeliver { Place = "Drawer 1", Going = SmallEdition.Numbers("1-3"), To = "Quay Gallery", As = MoveKind.Lent, Date = On("2026-02-20"), Until = On("2026-12") }, Codes(1, 2, 4));

        Assert.Equal(["lent", "lent", "pulled", "pulled"], new[] { 1, 2, 3, 4 }.Select(number => _register.Sheet(number).Whereabouts[^1].Kind));
        Assert.Equal("2026-12", _register.Sheet(1).Whereabouts[^1].Until.Text);
    }

    [Fact]
    public void Strangers_go_too_where_that_is_said()
    {
        _register.DeliverSheets.Run(
            new SheetsToDeliver { Place = "Drawer 1", Going = SmallEdition.Numbers("1"), To = "Quay Gallery", As = MoveKind.Exhibited, StrangersGo = true }, Codes(1, 4));

        Assert.Equal("exhibited", _register.Sheet(4).Whereabouts[^1].Kind);
    }

    [Fact]
    public void What_came_back_is_put_away_and_what_did_not_is_still_out()
    {
        _register.Consign.Run(SmallEdition.Numbers("1-3"), "Quay Gallery", On("2026-02-10"));

        var id = _register.ReceiveSheets.Run(new SheetsToReceive { Place = "Drawer 2", From = "Quay Gallery", Date = On("2026-02-20") }, Codes(1, 2));

        var seen = _register.LookAround.StockTake(id);
        Assert.Equal((2, 1, 0), (seen.Count("present"), seen.Count("missing"), seen.Open));
        Assert.Equal("with", _register.Sheet(3).Where!.State);
        Assert.Equal("Studio › Drawer 2", _register.LookAround.Book().PathOf(_register.Sheet(1).Where!.Place));
    }

    [Fact]
    public void A_place_goes_into_another_with_everything_in_it_and_out_again()
    {
        var drawer = Places.Find(_register.LookAround.Book(), "Drawer 1");
        _register.RecordPlace.Run("Attic");

        _register.EditPlace.Run(drawer, new PlaceCorrection { Inside = "Attic" });

        Assert.Equal(5, _register.LookAround.PlaceContents(Places.Find(_register.LookAround.Book(), "Attic")).Sheets);
        Assert.Equal(0, _register.LookAround.PlaceContents(Places.Find(_register.LookAround.Book(), "Studio")).Sheets);

        _register.EditPlace.Run(drawer, new PlaceCorrection { Inside = "" });

        Assert.Equal("Drawer 1", _register.LookAround.Book().PathOf(drawer));
    }

    [Fact]
    public void A_list_of_a_place_is_text_to_print_or_csv()
    {
        var studio = Places.Find(_register.LookAround.Book(), "Studio");

        _register.WritePlaceList.Run(studio, _temp.In("studio.txt"));
        _register.WritePlaceList.Run(studio, _temp.In("studio.csv"));

        var text = File.ReadAllLines(_temp.In("studio.txt"));
        Assert.Equal("Studio: what lies there", text[0]);
        Assert.Equal("Test, 2026-03-01. 5 sheets in 3 places, 2 of them empty.", text[1]);
        Assert.Equal(6, File.ReadAllLines(_temp.In("studio.csv")).Length);
        Assert.Equal("place,kind,code,title,maker,number,owner,condition,since", File.ReadAllLines(_temp.In("studio.csv"))[0]);
    }

    [Fact]
    public void Codes_come_from_a_file_as_scanners_write_it()
    {
        var code = _register.Sheet(1).ShownCode;
        var file = _temp.File("scanned.txt", $"\uFEFF# drawer\r\n{code}\r\nhttps://saltmarsh.example/p/{code.Replace("-", "", StringComparison.Ordinal)}\r\n");

        var read = ScansFromFile.Read(file);

        Assert.Equal([code], read.Codes.Select(one => one.ToString()));
        Assert.Equal(["line 3"], read.Repeated.Select(scan => scan.Where));
    }

    private static RecordedDate On(string date) => RecordedDate.Read(date);

    private void Lose(int number)
    {
        var take = _register.TakeStock.Run(new StockToTake { Place = "Studio", Date = On("2026-02-10") }, Codes([.. new[] { 1, 2, 3 }.Where(other => other != number)]));
        _register.SettleStock.Run(take, new StockSettlement { LoseMissing = true, Only = Codes(number) });
    }

    private ScanList Codes(params int[] numbers) => ScanList.OfTyped(string.Join(", ", numbers.Select(number => _register.Sheet(number).ShownCode)));
}
