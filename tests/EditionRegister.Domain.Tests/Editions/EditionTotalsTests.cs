using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Tests.Integrity;

namespace EditionRegister.Domain.Tests.Editions;

public class EditionTotalsTests(string culture = "") : InCulture(culture)
{
    /// <summary>
    /// The edition that a workshop's stipulations fix: 1 bon à tirer, 20 numbered, 9 impressions of the workshop, 1 cancellation proof;
    /// besides at most 3 artist's proofs, 2 trial proofs and 3 presentation proofs, a second printer's proof among them.
    /// Source: Tamarind stipulations, Archives of American Art, transcription.si.edu/view/41446/AAA-neveloui00027-000055.
    /// The sums are computed here: 31 without the proofs, 39 at most, 37 of them without the two trials.
    /// </summary>
    private static readonly Edition Stipulated = Of(
        Harbour.Numbers(1, 1, "bon-a-tirer", "none", 1),
        Harbour.Numbers(2, 2, "numbered", "arabic", 20),
        Harbour.Numbers(3, 3, "workshop", "arabic", 9),
        Harbour.Numbers(4, 4, "cancellation", "none", 1),
        Harbour.Numbers(5, 5, "artists-proof", "roman", 3),
        Harbour.Numbers(6, 6, "trial", "arabic", 2),
        Harbour.Numbers(7, 7, "presentation", "arabic", 3));

    [Fact]
    public void The_published_workshop_edition_adds_up()
    {
        var totals = EditionTotals.Of(Harbour.Clean(), Stipulated);

        Assert.Equal(20, totals.Size);
        Assert.Equal(37, totals.Total);
        Assert.Equal(39, totals.Total + totals.SheetsPulled.Sum(kind => kind.Count));
        Assert.Equal(["bon-a-tirer 1", "workshop 9", "cancellation 1", "artists-proof 3", "presentation 3"], totals.Proofs.Select(kind => $"{kind.Kind} {kind.Count}"));
        Assert.Equal(["trial 2"], totals.SheetsPulled.Select(kind => $"{kind.Kind} {kind.Count}"));
    }

    [Fact]
    public void The_published_workshop_edition_comes_to_31_without_its_other_proofs()
    {
        var core = EditionTotals.Of(Harbour.Clean(), Of([.. Stipulated.Numberings.Take(4)]));

        Assert.Equal((20L, 31L), (core.Size, core.Total));
    }

    // The same edition, the workshop's own impressions kept as a kind that the register made for itself: counted in the total, not in the size.
    [Theory]
    [InlineData(true, 37L, 39L)]
    [InlineData(false, 28L, 39L)]
    public void A_kind_of_the_registers_own_counts_as_its_flags_say(bool inTotal, long total, long sheets)
    {
        var own = NumberingKind.Own("house-impression", "House", "house impression", inSize: false, inTotal, forSale: false);
        var edition = Of([.. Stipulated.Numberings.Select(numbering => numbering.KindWord == "workshop" ? new Numbering(3, 1, 3, "house-impression", "arabic", 9, "stated", [], own) : numbering)]);

        var totals = EditionTotals.Of(Harbour.Clean(), edition);

        Assert.Equal((20L, total), (totals.Size, totals.Total));
        Assert.Equal(sheets, totals.Total + totals.SheetsPulled.Sum(kind => kind.Count));
    }

    // "100 + 10 AP = 110 images": workshop glossaries.
    [Fact]
    public void A_hundred_and_ten_artists_proofs_are_110_impressions()
    {
        var totals = EditionTotals.Of(Harbour.Clean(), Of(Harbour.Numbers(1, 1, "numbered", "arabic", 100), Harbour.Numbers(2, 2, "artists-proof", "roman", 10)));

        Assert.Equal((100L, 110L), (totals.Size, totals.Total));
    }

    [Fact]
    public void Two_numberings_of_the_edition_add_up_and_both_runs_are_named()
    {
        var totals = EditionTotals.Of(Harbour.Clean(), Of(Harbour.Numbers(1, 1, "numbered", "arabic", 40), Harbour.Numbers(2, 2, "numbered", "roman", 10)));

        Assert.Equal((50L, 50L, "1/40 to 40/40 and I/X to X/X"), (totals.Size, totals.Total, totals.SizeSpan));
    }

    [Fact]
    public void What_is_open_unknown_or_unreadable_has_no_sum()
    {
        var open = EditionTotals.Of(Harbour.Clean(), Of(new Numbering(1, 1, 1, "numbered", "arabic", null, "open", []), Harbour.Numbers(2, 2, "artists-proof", "roman", 2)));
        var unreadable = EditionTotals.Of(Harbour.Clean(), Of(Harbour.Numbers(1, 1, "numbered", "arabic", 12), Harbour.Numbers(2, 2, "?", "roman", 2)));
        var huge = EditionTotals.Of(Harbour.Clean(), Of([.. Enumerable.Range(1, 3).Select(id => new Numbering(id, 1, id, "numbered", "arabic", int.MaxValue, "stated", []))]));

        Assert.Equal((null, null), (open.Size, open.Total));
        Assert.Equal((null, null), (unreadable.Size, unreadable.Total));
        Assert.Equal(3L * int.MaxValue, huge.Size);
    }

    private static Edition Of(params Numbering[] numberings) =>
        new(1, 1, 1, "limited", "whole", null, RecordedDate.None, "no", RecordedDate.None, null, numberings);
}

public sealed class EditionTotalsInGermanTests() : EditionTotalsTests("de-DE");

public sealed class EditionTotalsInTurkishTests() : EditionTotalsTests("tr-TR");
