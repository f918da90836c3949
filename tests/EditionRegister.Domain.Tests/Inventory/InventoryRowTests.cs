using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Inventory;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Tests.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Inventory;

public class InventoryRowTests(string culture = "") : InCulture(culture)
{
    private readonly Work _clean = Harbour.Clean();

    [Fact]
    public void Columns_and_their_order_never_change()
    {
        Assert.Equal(
            "code, maker, title, year, technique, paper, state, standing, number, edition kind, edition size, printed, signed, inscription, image height mm, image width mm, sheet height mm, sheet width mm, condition, place, with, free to sell, asking price, currency",
            string.Join(", ", InventoryColumns.Names(owners: false)));
        Assert.Equal([.. InventoryColumns.Standard, "owner", "net price", "notes"], InventoryColumns.Names(owners: true));
    }

    [Fact]
    public void A_sheet_in_the_plan_chest()
    {
        var work = _clean.WithSheet("4/12", sheet => sheet with
        {
            Condition = "good",
            Inscriptions = [new(1, 1, "front", "written", null, "4/12 Harbour"), new(2, 2, "back", "stamped", null, null), new(3, 3, "back", "written", null, "for A.")],
        });

        Assert.Equal(
            [
                work.The("4/12").ShownCode, "Mara Quill", "Harbour", "2026", "reduction linocut", "Hosho", null, "kept", "4/12", "limited", "12",
                "2026-02-01/2026-03-01", "yes", "4/12 Harbour ⏎ for A.", "120", "90.5", "200", "150", "good", "studio › plan chest", null, "yes", null, null,
            ],
            InventoryRow.Of(work, work.The("4/12"), owners: false));
    }

    [Fact]
    public void Every_row_has_a_value_for_every_column()
    {
        Assert.All(_clean.Impressions, sheet => Assert.Equal(24, InventoryRow.Of(_clean, sheet, owners: false).Length));
        Assert.All(_clean.Impressions, sheet => Assert.Equal(27, InventoryRow.Of(_clean, sheet, owners: true).Length));
    }

    [Fact]
    public void A_consigned_sheet_is_with_the_gallery_and_has_its_price()
    {
        Assert.Equal((null, "Tidewater Gallery", "yes", "180.00", "EUR"), (Value(_clean, "5/12", "place"), Value(_clean, "5/12", "with"), Value(_clean, "5/12", "free to sell"), Value(_clean, "5/12", "asking price"), Value(_clean, "5/12", "currency")));
    }

    [Fact]
    public void A_private_buyer_is_a_private_collection_unless_owners_are_asked_for()
    {
        Assert.Equal("private collection", Value(_clean, "3/12", "with"));
        Assert.Equal(("Ivo Brandt", "Ivo Brandt", "180.00 EUR"), (Value(_clean, "3/12", "with", owners: true), Value(_clean, "3/12", "owner", owners: true), Value(_clean, "3/12", "net price", owners: true)));
        Assert.Equal("Mara Quill", Value(_clean, "4/12", "owner", owners: true));
    }

    [Fact]
    public void A_holder_who_is_not_the_owner_is_named_by_policy()
    {
        var work = _clean.WithSheet("4/12", sheet => sheet with { Whereabouts = [sheet.Whereabouts[0] with { To = Position.With(Harbour.Buyer) }] });
        var shy = work with { Book = new AddressBook(new Dictionary<long, Person>(work.Book.People) { [Harbour.Buyer] = work.Book.People[Harbour.Buyer] with { Policy = "initials" } }, work.Book.Places) };

        Assert.Equal(("Ivo Brandt", "I. B."), (Value(work, "4/12", "with"), Value(shy, "4/12", "with")));
    }

    [Fact]
    public void What_nobody_knows_stands_in_brackets()
    {
        var work = _clean with { Title = null, TitleState = "unknown", MakerState = "unknown", Roles = [] };

        Assert.Equal(("[unknown]", "[unknown]"), (Value(work, "4/12", "maker"), Value(work, "4/12", "title")));
        Assert.Equal("[untitled]", Value(work with { TitleState = "untitled" }, "4/12", "title"));
        Assert.Equal("Untitled", Value(_clean with { Title = "Untitled" }, "4/12", "title"));
        Assert.Equal("[unknown]", Value(At(Position.Unknown), "4/12", "place"));
        Assert.Equal("[gone]", Value(At(Position.Gone), "4/12", "place"));
        Assert.Equal("[unknown]", Value(At(new Position("with", null, null)), "4/12", "with"));
    }

    [Theory]
    [InlineData("limited", "whole", "limited")]
    [InlineData("limited", "partly-known", "limited, partly known")]
    [InlineData("open", "someone-elses", "open, someone else's")]
    [InlineData("unknown", "whole", "unknown")]
    public void The_kind_of_edition_also_says_whose_and_how_far_known(string kind, string extent, string words)
    {
        Assert.Equal(words, Value(_clean.WithEdition(edition => edition with { Kind = kind, Extent = extent }), "4/12", "edition kind"));
    }

    [Fact]
    public void Size_and_number_follow_the_pencil()
    {
        var work = _clean.WithEdition(edition => edition with { Numberings = [Harbour.Numbers(24, 4, "numbered", "roman", 2), .. edition.Numberings] });

        Assert.Equal("12", Value(work, "A/P II/II", "edition size"));
        Assert.Equal("4/12", Value(work.WithSheet("4/12", sheet => sheet with { Pencilled = null }), "4/12", "number"));
        Assert.Equal("4/15", Value(work.WithSheet("4/12", sheet => sheet with { Pencilled = "4/15" }), "4/12", "number"));
        Assert.Equal((null, null, null), (Value(work, "left out", "number"), Value(work, "left out", "edition kind"), Value(work, "left out", "edition size")));
    }

    [Fact]
    public void Money_that_is_none_has_no_amount()
    {
        var work = _clean.WithSheet("4/12", sheet => sheet with { Asking = long.MinValue, AskingCurrency = "EUR" });

        Assert.Null(Value(work, "4/12", "asking price"));
        Assert.Equal("500", Value(_clean.WithSheet("4/12", sheet => sheet with { Asking = 500, AskingCurrency = "JPY" }), "4/12", "asking price"));
    }

    private Work At(Position position) => _clean.WithSheet("4/12", sheet => sheet with { Whereabouts = [sheet.Whereabouts[0] with { To = position, Until = RecordedDate.None }] });

    private static string? Value(Work work, string number, string column, bool owners = false) =>
        InventoryRow.Of(work, work.The(number), owners)[InventoryColumns.Names(owners).ToList().IndexOf(column)];
}

public sealed class InventoryRowInGermanTests() : InventoryRowTests("de-DE");

public sealed class InventoryRowInTurkishTests() : InventoryRowTests("tr-TR");
