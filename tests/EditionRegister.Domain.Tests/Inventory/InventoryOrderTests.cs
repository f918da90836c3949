using EditionRegister.Domain.Inventory;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Tests.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Inventory;

public class InventoryOrderTests(string culture = "") : InCulture(culture)
{
    [Fact]
    public void By_kind_notation_and_number_and_unnumbered_last()
    {
        var work = Harbour.Clean().WithEdition(edition => edition with { Numberings = [Harbour.Numbers(24, 4, "numbered", "roman", 2), .. edition.Numberings] })
            .With(Harbour.Sheet(124, 20) with { Numbering = 24, Number = 1, Pencilled = "I/II" });

        var sorted = InventoryOrder.Sorted(Sheets(work).Reverse()).Select(sheet => sheet.Impression.Pencilled ?? sheet.Impression.Standing).ToList();

        Assert.Equal(
            ["1/12", "2/12", "3/12", "4/12", "5/12", "6/12", "7/12", "8/12", "9/12", "10/12", "11/12", "12/12", "I/II", "A/P I/II", "A/P II/II", "B.A.T."],
            sorted.SkipLast(2));
        Assert.Equal(["left-out", "spare"], sorted.TakeLast(2).Order(StringComparer.Ordinal));
    }

    // By code point: capitals before small letters, Ä and İ behind every letter of ASCII, in any culture.
    [Fact]
    public void Makers_and_titles_go_by_code_point()
    {
        var work = Harbour.Clean() with { Impressions = [Harbour.Clean().The("4/12")] };
        var sheets = new[] { "İnlet", "Ärmel", "inlet", "Zenith", "Inlet" }.SelectMany(title => Sheets(work with { Title = title }))
            .Concat(Sheets(By(work, "aara Quill"))).Concat(Sheets(By(work, "Zara Quill")));

        var sorted = InventoryOrder.Sorted(sheets).Select(sheet => $"{sheet.Work.ShownMaker[..4]} {sheet.Work.Title}");

        Assert.Equal(["Mara Inlet", "Mara Zenith", "Mara inlet", "Mara Ärmel", "Mara İnlet", "Zara Harbour", "aara Harbour"], sorted);
    }

    [Fact]
    public void A_number_only_pencilled_counts_and_the_code_settles_ties()
    {
        var work = Harbour.Clean() with { Impressions = [.. Enumerable.Range(1, 40).Select(n => Harbour.Sheet(n, n) with { Pencilled = n % 2 == 0 ? $"{n}/50" : null })] };

        var sorted = InventoryOrder.Sorted(Sheets(work).Reverse()).Select(sheet => sheet.Impression).ToList();

        Assert.Equal(Enumerable.Range(1, 20).Select(n => $"{2 * n}/50"), sorted.Take(20).Select(sheet => sheet.Pencilled));
        Assert.Equal(sorted.Skip(20).Select(sheet => sheet.Code).Order(StringComparer.Ordinal), sorted.Skip(20).Select(sheet => sheet.Code));
    }

    [Fact]
    public void The_comparer_sorts_alike()
    {
        var sheets = Sheets(Harbour.Clean()).Reverse().ToList();

        var sorted = InventoryOrder.Sorted(sheets).ToList();
        sheets.Sort(InventoryOrder.Instance);

        Assert.Equal(sorted, sheets);
    }

    private static Work By(Work work, string maker) =>
        work with { Book = new AddressBook(new Dictionary<long, Person> { [Harbour.Maker] = Harbour.A(Harbour.Maker, maker, null) }, work.Book.Places) };

    private static IEnumerable<InventorySheet> Sheets(Work work) => work.Impressions.Select(sheet => new InventorySheet(work, sheet));
}

public sealed class InventoryOrderInGermanTests() : InventoryOrderTests("de-DE");

public sealed class InventoryOrderInTurkishTests() : InventoryOrderTests("tr-TR");
