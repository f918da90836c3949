using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Inventory;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Tests.Integrity;

namespace EditionRegister.Domain.Tests.Documents;

public class DamageOnDocumentsTests
{
    [Fact]
    public void A_damaged_sheet_still_has_its_facts_its_label_and_its_row()
    {
        var work = Damage.Everywhere();

        Assert.All(work.Impressions, sheet => Assert.All(CertificateFacts.Of(work, sheet, SizeStyle.Millimetres).SkipLast(1), fact => Assert.False(string.IsNullOrWhiteSpace(fact.Value))));
        Assert.All(work.Impressions, sheet => Assert.NotEmpty(LabelComposer.Of(work, sheet, null, SizeStyle.Millimetres).Lines));
        Assert.All(work.Impressions, sheet => Assert.NotNull(PencilText.For(work, sheet)));
        Assert.All(work.Impressions, sheet => Assert.Equal(27, InventoryRow.Of(work, sheet, owners: true).Length));
        Assert.Equal(work.Impressions.Count, InventoryOrder.Sorted(work.Impressions.Select(sheet => new InventorySheet(work, sheet))).Count());
    }

    [Fact]
    public void A_damaged_sheet_gets_no_certificate()
    {
        var work = Damage.Everywhere();

        Assert.All(work.Impressions.DistinctBy(sheet => (sheet.Numbering, sheet.Number)), sheet => Assert.Throws<RefusedException>(() => CertificateConditions.Demand(work, sheet)));
    }
}
