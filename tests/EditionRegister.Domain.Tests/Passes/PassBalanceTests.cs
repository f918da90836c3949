using EditionRegister.Domain.Passes;

namespace EditionRegister.Domain.Tests.Passes;

/// <summary>Sheets through passes, each example worked out by hand in the line above it.</summary>
public sealed class PassBalanceTests
{
    // 24 started, 1 unused: 23. Pass 1 spoils 2 and holds out 1: 23 - 3 = 20. Pass 2 gets 2 more and spoils 1: 20 + 2 - 1 = 21.
    [Fact]
    public void Each_pass_takes_in_what_the_one_before_left()
    {
        var standings = PassBalance.Of(OnePass.Run(24, 1, OnePass.Of(1, 23, 0, 20, 2, 1), OnePass.Of(2, 20, 2, 21, 1, 0)));

        Assert.Equal([(23L, 20L), (20L, 21L)], standings.Select(standing => (standing.AtHand!.Value, standing.Left!.Value)));
    }

    // 12 at hand, 4 go through and 1 of them is spoiled: 8 lie aside, 3 come out, 11 are at hand; then all 11 go through.
    [Fact]
    public void Sheets_that_a_pass_leaves_aside_stay_at_hand()
    {
        var standings = PassBalance.Of(OnePass.Run(12, 0, OnePass.Of(1, 4, 0, 3, 1, 0).OverSome(), OnePass.Of(2, 11, 0, 11, 0, 0)));

        Assert.Equal([11L, 11L], standings.Select(standing => standing.Left!.Value));
    }

    // Some of 12 went through, nobody counted how many; 2 were spoiled, so 12 - 2 = 10 are left all the same.
    [Fact]
    public void What_is_left_can_be_told_without_knowing_how_many_went_through() =>
        Assert.Equal(10, PassBalance.AtHand(OnePass.Run(12, 0, OnePass.Of(1, null, 0, null, 2, 0).OverSome())));

    [Fact]
    public void Where_nobody_counted_nothing_is_told_until_somebody_counts_again()
    {
        var standings = PassBalance.Of(OnePass.Run(null, null, OnePass.Of(1, null, null, null, null, null), OnePass.Of(2, 15, 0, 14, 1, 0)));

        Assert.Equal([(null, null), (null, 14L)], standings.Select(standing => (standing.AtHand, standing.Left)));
    }

    // 14 at hand, 13 out, 1 spoiled: nothing is left to hold out.
    [Fact]
    public void All_at_hand_go_in_and_the_last_count_follows() =>
        Assert.Equal(new PassCounts(14, 0, 13, 1, 0), PassBalance.Completed(new PassCounts(null, 0, 13, 1, null), 14, takesAll: true));

    // 14 in, 14 out: none spoiled and none held out, as neither can be less than nothing.
    [Fact]
    public void As_many_out_as_in_leaves_none_spoiled_and_none_held_out() =>
        Assert.Equal(new PassCounts(14, 0, 14, 0, 0), PassBalance.Completed(new PassCounts(14, 0, 14, null, null), null, takesAll: true));

    // 14 in, 12 out: whether 2 are spoiled, or held out, or one of each, does not follow.
    [Fact]
    public void What_does_not_follow_stays_unknown() =>
        Assert.Equal(new PassCounts(14, 0, 12, null, null), PassBalance.Completed(new PassCounts(14, 0, 12, null, null), null, takesAll: true));

    [Theory]
    [InlineData(null, 0, 13, 1, 0, 14, 0, 13, 1, 0)]
    [InlineData(12, null, 13, 1, 0, 12, 2, 13, 1, 0)]
    [InlineData(14, 0, null, 1, 1, 14, 0, 12, 1, 1)]
    [InlineData(14, 0, 12, null, 1, 14, 0, 12, 1, 1)]
    [InlineData(14, 1, 12, 2, null, 14, 1, 12, 2, 1)]
    public void The_one_count_missing_is_what_makes_the_others_come_out_even(int? i, int? a, int? o, int? s, int? h, int went, int added, int came, int spoiled, int held) =>
        Assert.Equal(new PassCounts(went, added, came, spoiled, held), PassBalance.Completed(new PassCounts(i, a, o, s, h), null, takesAll: false));

    // 3 sheets out of 2 that went in: no count can make up for that, so none is made up.
    [Fact]
    public void A_count_that_cannot_be_is_not_made_up() =>
        Assert.Null(PassBalance.Completed(new PassCounts(2, 0, 3, null, 0), null, takesAll: false).Spoiled);

    // In 23 + added 0 + 2 = 25; spoiled 2 + 1 = 3; held out 1 + 0 = 1.
    [Fact]
    public void All_passes_together_come_to_what_their_run_counts() =>
        Assert.Equal(new PassTotals(25, 3, 1), PassBalance.Totals(OnePass.Run(26, 1, OnePass.Of(1, 23, 0, 20, 2, 1), OnePass.Of(2, 20, 2, 21, 1, 0))));
}
