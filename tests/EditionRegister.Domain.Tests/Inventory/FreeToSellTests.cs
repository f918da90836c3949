using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Inventory;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Tests.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Inventory;

public class FreeToSellTests
{
    private static readonly Work Clean = Harbour.Clean();

    [Theory]
    [InlineData("4/12", "yes")]
    [InlineData("5/12", "yes")]
    [InlineData("A/P II/II", "yes")]
    [InlineData("3/12", "no")]
    [InlineData("B.A.T.", "no")]
    [InlineData("spare", "no")]
    [InlineData("left out", "no")]
    public void By_custom(string number, string answer)
    {
        Assert.Equal(answer, FreeToSell.Of(Clean, Clean.The(number)));
    }

    // Which kinds are for sale by custom: common practice, no source.
    [Fact]
    public void By_the_kind_of_numbering()
    {
        var sold = NumberingKind.All.Where(kind => Answer(Clean.WithNumbering("artists-proof", numbering => numbering with { KindWord = kind.Word }), "A/P II/II") == "yes");

        Assert.Equal(["numbered", "artists-proof", "printers-proof", "publishers-proof"], sold.Select(kind => kind.Word));

        static string Answer(Work work, string pencilled) => FreeToSell.Of(work, work.Impressions.First(sheet => sheet.Pencilled == pencilled));
    }

    [Theory]
    [InlineData("4/12", "no", "no")]
    [InlineData("4/12", "unknown", "unknown")]
    [InlineData("B.A.T.", "yes", "yes")]
    [InlineData("3/12", "yes", "no")]
    [InlineData("left out", "yes", "no")]
    [InlineData("4/12", "?", "unknown")]
    public void Decided_otherwise_for_one_sheet(string number, string forSale, string answer)
    {
        Assert.Equal(answer, FreeToSell.Of(Clean, Clean.The(number) with { ForSale = forSale }));
    }

    [Fact]
    public void Where_something_is_not_known()
    {
        var sheet = Clean.The("4/12");

        Assert.Equal("unknown", FreeToSell.Of(Clean, Owned(sheet, Owner.Unknown)));
        Assert.Equal("unknown", FreeToSell.Of(Clean, At(sheet, Position.Unknown)));
        Assert.Equal("no", FreeToSell.Of(Clean, At(sheet, Position.Gone)));
        Assert.Equal("no", FreeToSell.Of(Clean, At(Owned(sheet, Owner.Unknown), Position.Gone)));
        Assert.Equal("unknown", FreeToSell.Of(Clean, sheet with { Numbering = null, Number = null }));
        Assert.Equal("unknown", FreeToSell.Of(Clean with { Roles = [] }, sheet));
    }

    private static Impression Owned(Impression sheet, Owner owner) => sheet with { Ownership = [sheet.Ownership[0] with { To = owner }] };

    private static Impression At(Impression sheet, Position position) => sheet with { Whereabouts = [sheet.Whereabouts[0] with { To = position }] };
}
