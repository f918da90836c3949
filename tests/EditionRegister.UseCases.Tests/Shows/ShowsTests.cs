using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Shows;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Moves;

namespace EditionRegister.UseCases.Tests.Shows;

public sealed class ShowsTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public ShowsTests()
    {
        _register = SmallEdition.Make(_temp.Register);
        _register.MakeShow.Run(new NewShow
        {
            Name = " Open studio ", Kind = "sale", Place = 1, Host = 2, Opens = RecordedDate.Read("2026-06-12"), Closes = RecordedDate.Read("2026-06"), Note = "Bring the press.",
        });
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void A_show_is_read_as_it_was_made()
    {
        var show = Assert.Single(_register.LookAround.Shows());

        Assert.Equal(("Open studio", "sale", 1L, 2L, "Bring the press."), (show.Name, show.Kind, show.Place, show.Host, show.Note));
        Assert.Equal((new DateOnly(2026, 6, 12), new DateOnly(2026, 6, 30)), (show.Opens.Earliest, show.Closes.Latest));
        Assert.Empty(show.Listings);
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void Sheets_are_listed_in_the_order_in_which_they_are_named_across_additions()
    {
        _register.AddToShow.Run(1, SmallEdition.Numbers("3, 1"));
        _register.AddToShow.Run(1, SmallEdition.Numbers("A/P I"));

        Assert.Equal(["3/4", "1/4", "A/P I/I"], Numbers());
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void A_sheet_taken_off_keeps_its_row_and_gets_its_place_back()
    {
        _register.AddToShow.Run(1, SmallEdition.Numbers("1-3"));

        _register.RemoveFromShow.Run(1, SmallEdition.Numbers("2"));

        Assert.Equal(["1/4", "3/4"], Numbers());
        Assert.Equal(3, _register.LookAround.Show(1).Show.Listings.Count);

        _register.AddToShow.Run(1, SmallEdition.Numbers("2"));

        Assert.Equal(["1/4", "2/4", "3/4"], Numbers());
    }

    [Fact]
    public void A_sold_sheet_and_one_that_is_away_may_hang()
    {
        _register.Consign.Run(SmallEdition.Numbers("1"), "Quay Gallery");
        _register.SellImpressions.Run(SmallEdition.Numbers("1"), new SalePeople("Quay Gallery"), new Sale { Price = 10_000, Currency = "EUR" });

        _register.AddToShow.Run(1, SmallEdition.Numbers("1"));

        Assert.Equal(["1/4"], Numbers());
    }

    [Fact]
    public void Impressions_are_chosen_by_the_show_that_lists_them_in_list_order()
    {
        _register.AddToShow.Run(1, SmallEdition.Numbers("4, 2"));
        _register.AddToShow.Run(1, SmallEdition.Numbers("3"));
        _register.RemoveFromShow.Run(1, SmallEdition.Numbers("2"));

        var chosen = Assert.Single(_register.LookAround.Chosen(new ImpressionChoice { Show = 1 }));

        Assert.Equal([4, 3], chosen.Sheets.Select(sheet => sheet.Number));
    }

    [Fact]
    public void A_correction_changes_what_it_names_and_nothing_else()
    {
        var seen = _register.LookAround.Show(1).Show.V;

        _register.EditShow.Run(1, new ShowCorrection { Name = "Open doors", Closes = RecordedDate.Read("2026-06-14") }, seen);

        var show = _register.LookAround.Show(1).Show;
        Assert.Equal(("Open doors", "sale", "2026-06-12", "2026-06-14", "Bring the press."), (show.Name, show.Kind, show.Opens.Text, show.Closes.Text, show.Note));
        Assert.Empty(_register.CheckRegister.Run());
    }

    private IEnumerable<string> Numbers() => _register.LookAround.Show(1).Listed.Select(listed => listed.Work.NumberOf(listed.Impression));
}
