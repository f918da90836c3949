using EditionRegister.Store;
using EditionRegister.Tests;
using EditionRegister.UseCases.Demo;
using Microsoft.Data.Sqlite;

namespace EditionRegister.UseCases.Tests.Demo;

/// <summary>The demo's consignment against figures worked out by hand.</summary>
public sealed class ConsignmentThatEndsInASaleTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        _folder.Dispose();
    }

    [Fact]
    public void The_gallery_sells_on_the_makers_behalf_and_the_net_is_what_remains_of_the_price()
    {
        var register = Register.Open(DemoCopy.Into(new RegisterFolder(_folder.In("register"))));

        var work = register.LookAround.Works().Single(one => one.Title == "Neap Tide");
        var sheet = work.Impressions.Single(one => one.Number == 3);
        var sold = sheet.Ownership[^1];

        // By hand: 37.5 % of 145.55 is 54.58125. Whole cents of it are the gallery's, rounded down: 54.58. What remains: 145.55 - 54.58 = 90.97.
        Assert.Equal((14_555L, 9_097L, "EUR"), (sold.Price!.Value, sold.Net!.Value, sold.Currency));
        Assert.Equal(("Quay Gallery", "Joost Averink"), (work.Book.NameOf(sold.Agent), work.Book.NameOf(sold.To.Person)));

        // Four went, one was sold and collected: three are with the gallery still; two of the six never left.
        Assert.Equal(3, work.Impressions.Count(one => one.Where is { State: "with" } && one.Whereabouts[^1].Kind == "consigned"));
        Assert.Equal(2, work.Impressions.Count(one => one.Where is { State: "placed" }));
        Assert.Equal(("lifted", "2026-10-20"), (sheet.Reservations.Single().Standing, sheet.Reservations.Single().Until.Text));
        Assert.All(work.Impressions.Where(one => one.Whereabouts.Count > 1), one => Assert.Equal(("autumn agreement of 2026-10-04", 3_750), (one.Whereabouts[1].Agreement, one.Whereabouts[1].Rate)));
        Assert.Empty(register.CheckRegister.Run());
    }
}
