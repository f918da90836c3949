using CsCheck;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Domain.Tests.Impressions;

/// <summary>The sheets proposed against sets worked out by hand, and against every subset of small piles.</summary>
public class ProposalTests
{
    private static readonly int[] Perfect = [5, 5, 5, 5, 5];

    [Fact]
    public void The_clean_ones_where_they_are_alike()
    {
        var proposal = Proposal.Of(Graded.Pile([3, 3, 3, 3, 3], Perfect, [4, 5, 5, 5, 5], Perfect, [1, 1, 1, 1, 1]), 3);

        // Around a perfect sheet: 0 + 0, and the third lacks 1 and differs 1.
        Assert.Equal([2, 3, 4], Graded.Places(proposal));
        Assert.Equal(2, proposal.Costs);
        Assert.Equal(2, proposal.Middle!.Ordinal);
    }

    [Fact]
    public void Three_alike_that_lack_a_little_rather_than_three_that_lack_less_each_in_another_way()
    {
        // Sheets 1 to 3 lack 2 each and are the same: 2 + 2 + 2 = 6. Sheets 4 to 6 lack 1 each, but any one differs from the others by 2: 1 + 3 + 3 = 7.
        var proposal = Proposal.Of(Graded.Pile([5, 3, 5, 5, 5], [5, 3, 5, 5, 5], [5, 3, 5, 5, 5], [4, 5, 5, 5, 5], [5, 5, 4, 5, 5], [5, 5, 5, 4, 5]), 3);

        Assert.Equal([1, 2, 3], Graded.Places(proposal));
        Assert.Equal(6, proposal.Costs);
    }

    [Fact]
    public void The_cleaner_ones_once_the_alike_lack_more()
    {
        // Now the alike lack 3 each: 9, against 7 as before.
        var proposal = Proposal.Of(Graded.Pile([5, 2, 5, 5, 5], [5, 2, 5, 5, 5], [5, 2, 5, 5, 5], [4, 5, 5, 5, 5], [5, 5, 4, 5, 5], [5, 5, 5, 4, 5]), 3);

        Assert.Equal([4, 5, 6], Graded.Places(proposal));
        Assert.Equal(7, proposal.Costs);
    }

    [Fact]
    public void What_comes_out_the_same_goes_by_the_order_of_the_pile()
    {
        var proposal = Proposal.Of(Graded.Pile(Perfect, Perfect, Perfect, Perfect), 2);

        Assert.Equal([1, 2], Graded.Places(proposal));
        Assert.Equal([3, 4], proposal.Others.Select(one => one.Sheet.Ordinal));
    }

    [Fact]
    public void What_nobody_looked_at_comes_after_what_is_fully_graded_and_is_never_bad()
    {
        // Sheet 1 has four best marks and one not looked at; sheet 3 was not graded at all; sheet 4 has one mark, and that a poor one.
        var pile = Graded.Pile([5, 5, 5, 5, 0], [3, 3, 3, 3, 3], [0, 0, 0, 0, 0], [1, 0, 0, 0, 0], [2, 2, 2, 2, 2]);

        Assert.Equal([2, 5], Graded.Places(Proposal.Of(pile, 2)));
        Assert.Equal([1, 2, 5], Graded.Places(Proposal.Of(pile, 3)));
        var four = Proposal.Of(pile, 4);
        Assert.Equal([1, 2, 3, 5], Graded.Places(four));
        Assert.Equal(2, four.NotFullyGraded);
        // 2 + 5 around sheet 2: it lacks 10; sheet 5 lacks 15 and differs 5.
        Assert.Equal(30, four.Costs);
    }

    [Fact]
    public void Without_a_fully_graded_sheet_there_is_no_middle()
    {
        var proposal = Proposal.Of(Graded.Pile([0, 4, 0, 0, 0], [0, 5, 0, 0, 0]), 1);

        Assert.Null(proposal.Middle);
        Assert.Equal([2], Graded.Places(proposal));
    }

    // The second opinion tries every middle and every subset, in the order of the pile, and keeps the first that costs least.
    [Fact]
    public void Agrees_with_every_subset_of_small_piles() =>
        Gen.Int[1, 5].Array[5].Array[1, 9].SelectMany(marks => Gen.Int[1, marks.Length].Select(keep => (marks, keep))).Sample(
            drawn =>
            {
                var proposal = Proposal.Of(Graded.Pile(drawn.marks), drawn.keep);
                var (places, costs) = EverySubset.Cheapest(drawn.marks, drawn.keep);

                Assert.Equal(costs, proposal.Costs);
                Assert.Equal(places, Graded.Places(proposal));
            },
            iter: 200);

    [Fact]
    public void Agrees_with_every_subset_of_piles_of_fourteen() =>
        Gen.Int[2, 5].Array[5].Array[14].SelectMany(marks => Gen.Int[1, 14].Select(keep => (marks, keep))).Sample(
            drawn => Assert.Equal(EverySubset.Cheapest(drawn.marks, drawn.keep).Places, Graded.Places(Proposal.Of(Graded.Pile(drawn.marks), drawn.keep))),
            iter: 5);

    [Fact]
    public void A_pile_of_a_thousand_is_no_matter()
    {
        Random draw = new(7);
        int[][] marks = [.. Enumerable.Range(0, 1_000).Select(_ => Enumerable.Range(0, 5).Select(_ => draw.Next(1, 6)).ToArray())];

        var proposal = Proposal.Of(Graded.Pile(marks), 100);

        Assert.Equal(100, proposal.Sheets.Count);
        Assert.All(Enumerable.Range(0, 20), at => Assert.True(Around(marks, at * 50, 100) >= proposal.Costs));
    }

    private static int Around(int[][] marks, int middle, int keep) => marks.Select(one => EverySubset.Cost(one, marks[middle])).Order().Take(keep).Sum();
}
