using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class SheetsBalanceTests
{
    private static readonly Work Clean = Harbour.Clean();

    [Fact]
    public void Sheets_that_do_not_come_out_even()
    {
        Assert.Equal(
            ["Contradiction: In print run 1 of “Harbour” 25 sheets were started, and 20 came of it: 1 unused, 2 spoiled, 17 impressions."],
            FindingsOf.Rule("SheetsBalance", Clean.WithRun(run => run with { Started = 25 })));
        Assert.Equal(
            ["Contradiction: In print run 1 of “Harbour” 15 sheets were started, and 19 came of it: an unknown number unused, 2 spoiled, 17 impressions."],
            FindingsOf.Rule("SheetsBalance", Clean.WithRun(run => run with { Started = 15, Unused = null })));
    }

    [Fact]
    public void What_nobody_counted_may_be_any_number()
    {
        Assert.Empty(FindingsOf.Rule("SheetsBalance", Clean.WithRun(run => run with { Started = 30, Unused = null })));
        Assert.Empty(FindingsOf.Rule("SheetsBalance", Clean.WithRun(run => run with { Started = null })));
    }

    // The two artist's proofs may have been held out or chosen from the kept sheets: one to three are possible.
    [Fact]
    public void Sheets_held_out()
    {
        Assert.Empty(FindingsOf.Rule("SheetsBalance", Clean.WithRun(run => run with { HeldOut = 3 })));
        Assert.Equal(
            ["Contradiction: In print run 1 of “Harbour” 4 sheets were held out as proofs, and 3 impressions are held out or numbered as a proof."],
            FindingsOf.Rule("SheetsBalance", Clean.WithRun(run => run with { HeldOut = 4 })));
        Assert.Equal(
            ["Contradiction: In print run 1 of “Harbour” 0 sheets were held out as proofs, and 1 impression is held out or numbered as a proof."],
            FindingsOf.Rule("SheetsBalance", Clean.WithRun(run => run with { HeldOut = 0 })));
    }
}
