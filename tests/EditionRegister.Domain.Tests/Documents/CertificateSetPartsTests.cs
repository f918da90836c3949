using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Sets;
using EditionRegister.Domain.Tests.Integrity;

namespace EditionRegister.Domain.Tests.Documents;

/// <summary>What a certificate says of a copy of a set, of a sheet that lies in one, and of a number altered on the sheet.</summary>
public class CertificateSetPartsTests
{
    [Fact]
    public void A_copy_names_its_parts_with_their_numbers()
    {
        var work = Harbour.Clean() with { Set = new PrintSet(1, 1, "portfolio", "colophon", null, [new SetPart(1, 1, 1, "Ebb"), new SetPart(2, 2, 2, "Flood")]) };
        var copy = work.The("7/12") with { SetSheets = [new SetSheet(1, 2, 1, "ABCDEFGH", "7/12", "in", null, null), new SetSheet(2, 3, 2, "ABCDEFGH", "7/12", "taken-out", null, null)] };

        Assert.Equal(
            [new("set", "portfolio of 2 parts, signed on the colophon instead of the sheets"), new("parts", "1. Ebb, 7/12; 2. Flood, not in this copy")],
            CertificateSetParts.Of(work, copy));
    }

    [Fact]
    public void A_sheet_in_a_copy_names_the_copy() =>
        Assert.Equal([new("set", "lies in copy 3/20 of Shoreline")], CertificateSetParts.Of(Harbour.Clean(), Harbour.Clean().The("7/12") with { InSet = new SetMembership(9, "Shoreline", 1, "ABCDEFGH", "3/20") }));

    [Fact]
    public void A_sheet_of_no_set_says_nothing_of_sets() => Assert.Empty(CertificateSetParts.Of(Harbour.Clean(), Harbour.Clean().The("7/12")));

    [Fact]
    public void A_number_altered_on_the_sheet_is_disclosed_and_a_title_is_not()
    {
        var sheet = Harbour.Clean().The("7/12") with
        {
            Changes = [new SheetChange(1, 1, "title", "Habour", "Harbour", null, Harbour.On("2026-03-05")), new SheetChange(2, 2, "number", "8/12", "7/12", "slip", Harbour.On("2026-03-06"))],
        };

        Assert.Equal([new("altered", "the number was 8/12, and is 7/12, 6 March 2026")], CertificateAlterations.Of(sheet));
        Assert.Empty(CertificateAlterations.Of(sheet with { Changes = [sheet.Changes[0]] }));
    }
}
