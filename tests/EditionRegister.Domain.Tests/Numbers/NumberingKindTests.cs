using EditionRegister.Domain.Numbers;

namespace EditionRegister.Domain.Tests.Numbers;

public sealed class NumberingKindTests
{
    /// <summary>What counts. That a denominator counts neither proofs nor trials: IFPDA glossary and the Tamarind definitions; who sells what: common practice, no source.</summary>
    [Fact]
    public void What_counts_is_what_the_table_says()
    {
        string[] table =
        [
            "numbered            size total sale",
            "artists-proof            total sale A/P",
            "printers-proof           total sale P/P",
            "publishers-proof         total sale publisher's proof",
            "hors-commerce            total      H.C.",
            "bon-a-tirer              total      B.A.T.",
            "trial                               T/P",
            "state                               state proof",
            "progressive                         progressive proof",
            "colour-trial                        C.T.P.",
            "cancellation             total      C/P",
            "presentation             total      presentation proof",
            "workshop                 total      workshop proof",
            "archive                  total      archive proof",
            "exchange                 total      exchange proof",
            "legal-deposit            total      legal deposit",
        ];

        var lines = NumberingKind.All.Select(kind =>
            $"{kind.Word,-19} {(kind.InSize ? "size" : ""),-4} {(kind.InTotal ? "total" : ""),-5} {(kind.ForSale ? "sale" : ""),-4} {kind.Mark}".TrimEnd());

        Assert.Equal(table, lines);
    }

    [Fact]
    public void Every_word_finds_its_kind_and_no_two_share_word_mark_or_name()
    {
        foreach (var kind in NumberingKind.All)
        {
            Assert.True(NumberingKind.TryFind(kind.Word, out var found));
            Assert.Same(kind, found);
        }

        Assert.Equal(NumberingKind.All.Count, NumberingKind.All.DistinctBy(kind => kind.Word).Count());
        Assert.Equal(NumberingKind.All.Count, NumberingKind.All.DistinctBy(kind => kind.Mark).Count());
        Assert.Equal(NumberingKind.All.Count, NumberingKind.All.DistinctBy(kind => kind.Name).Count());
        Assert.False(NumberingKind.TryFind("Numbered", out _));
        Assert.False(NumberingKind.TryFind("A/P", out _));
    }

    [Fact]
    public void No_kind_is_marked_with_the_letters_that_mean_state_and_special_alike()
    {
        Assert.DoesNotContain(NumberingKind.All, kind => kind.Mark is "S/P" or "SP" or "S.P.");
        Assert.False(PencilledNumber.TryParse("S/P 1/3", out _));
        Assert.False(PencilledNumber.TryParse("SP", out _));
    }
}
