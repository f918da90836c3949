using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Tests.Passes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

/// <summary>
/// The passes of “Harbour”: 20 sheets started, 1 unused, 2 spoiled, 1 held out and 17 in the pile with it. In state I block 5 lost 1 sheet and 1 was held out
/// (19 in, 17 out), in state II it lost 1 (17 in, 16 out): 16 and the one held out are 17.
/// </summary>
public sealed class PassRulesTests
{
    [Fact]
    public void Passes_that_add_up_to_their_run_are_no_matter() => Assert.Empty(Findings(WithPasses(Good())));

    [Fact]
    public void Spoiled_sheets_that_do_not_add_up_contradict()
    {
        var passes = Good();
        passes[1] = OnePass.Of(2, 17, 0, 15, 2, 0).From(5, 502);

        Assert.Equal(["In print run 1 of “Harbour” 2 sheets were spoiled, and its passes spoiled 3."], Messages(WithPasses(passes), Severity.Contradiction));
    }

    [Fact]
    public void A_pass_that_takes_in_more_than_was_left_contradicts()
    {
        var passes = Good();
        passes[1] = OnePass.Of(2, 18, 0, 17, 1, 0).From(5, 502);

        Assert.Equal(["Pass 2 of print run 1 of “Harbour” took in 18 sheets, and 17 were left at hand."], Messages(WithPasses(passes), Severity.Contradiction));
    }

    [Fact]
    public void A_pass_over_all_that_took_in_fewer_is_asked_about()
    {
        var passes = Good();
        passes[1] = OnePass.Of(2, 16, 0, 15, 1, 0).From(5, 502);

        Assert.Equal(["Pass 2 of print run 1 of “Harbour” took in 16 sheets of 17 at hand, though all are said to have gone through."], Messages(WithPasses(passes), Severity.Query));
    }

    [Fact]
    public void A_pass_that_does_not_come_out_even_contradicts()
    {
        var passes = Good();
        passes[1] = OnePass.Of(2, 17, 0, 16, 0, 0).From(5, 502) with { };

        Assert.Contains("In pass 2 of print run 1 of “Harbour” 17 sheets went in or were added, and 16 came of it: 16 out, 0 spoiled, 0 held out.", Messages(WithPasses(passes), Severity.Contradiction));
    }

    [Fact]
    public void Counts_nobody_made_contradict_nothing()
    {
        Pass[] passes = [OnePass.Of(1, null, null, null, null, null), OnePass.Of(2, 17, null, null, 1, null), OnePass.Of(3, null, null, 16, null, null)];

        Assert.Empty(Findings(WithPasses(passes)));
    }

    // Of 17 at hand 5 were hand-coloured, none was lost.
    [Fact]
    public void Hand_colouring_of_some_sheets_is_no_matter() =>
        Assert.Empty(Findings(WithPasses([.. Good(), OnePass.Of(3, 5, 0, 5, 0, 0).OverSome() with { Kind = "hand-colouring" }])));

    [Fact]
    public void Proofs_set_aside_from_the_finished_pile_need_no_pass()
    {
        Pass[] passes = [OnePass.Of(1, 19, 0, 18, 1, 0), OnePass.Of(2, 18, 0, 17, 1, 0)];

        Assert.Empty(Findings(WithPasses(passes)));
    }

    [Fact]
    public void Opaque_white_over_dark_is_no_matter()
    {
        var passes = Good();
        passes[0] = passes[0] with { Colours = [new PassColour(1, 1, "black", null, "flat")] };
        passes[1] = passes[1] with { Colours = [new PassColour(2, 1, "opaque white", null, "flat")] };

        Assert.Empty(Findings(WithPasses(passes)));
    }

    [Fact]
    public void A_full_bleed_is_no_matter() =>
        Assert.Empty(Findings(Harbour.Clean().WithRun(run => run with { ImageHeight = run.SheetHeight, ImageWidth = run.SheetWidth })));

    [Fact]
    public void A_sheet_trimmed_inside_the_plate_mark_is_no_matter() =>
        Assert.Empty(Findings(Harbour.Clean().WithRun(run => run with { ImageHeight = 210_000, ImageWidth = 160_000 })));

    [Fact]
    public void A_reduction_that_goes_back_to_an_earlier_state_contradicts()
    {
        Pass[] passes = [OnePass.Of(1, 19, 0, 17, 1, 1).From(5, 502), OnePass.Of(2, 17, 0, 16, 1, 0).From(5, 501)];

        Assert.Equal(
            ["Pass 2 of print run 1 of “Harbour” printed state I of block 5, a reduction that printed state II in an earlier pass."], Messages(WithPasses(passes), Severity.Contradiction));
    }

    [Fact]
    public void A_state_printed_before_it_was_reached_contradicts()
    {
        var passes = Good();
        passes[1] = passes[1].On("2026-02-09");

        Assert.Equal(
            ["Pass 2 of print run 1 of “Harbour” (2026-02-09) printed state II of block 5, which it came to 2026-02-10."], Messages(WithPasses(passes), Severity.Contradiction));
    }

    // The last cut comes before the last colour: the block was cut away on the 20th, and that colour was printed on the 24th.
    [Fact]
    public void The_last_colour_of_a_reduction_comes_after_its_last_cut()
    {
        var passes = Good();
        passes[1] = passes[1].On("2026-02-24");

        Assert.Empty(Findings(WithPasses(passes)));
    }

    [Fact]
    public void A_pass_after_the_matrix_was_cancelled_contradicts()
    {
        var passes = Good();
        passes[1] = passes[1].On("2026-02-24");
        var work = WithPasses(passes).WithMatrix(matrix => matrix with { Reduction = "no", Fate = "cancelled" });

        Assert.Contains("Pass 2 of print run 1 of “Harbour” (2026-02-24) printed from block 5 after it was cancelled (2026-02-20).", Messages(work, Severity.Contradiction));
    }

    [Fact]
    public void A_proof_of_the_cancellation_and_a_disclosed_restrike_are_no_matter()
    {
        PrintRun proof = OnePass.Run(1, 0, OnePass.Of(1, 1, 0, 1, 0, 0).From(5).On("2026-02-21")) with { Id = 8, Ordinal = 2, Purpose = "proofing", CancellationProof = "yes", Started = null };
        PrintRun restrike = proof with { Id = 9, Ordinal = 3, Purpose = "restrike", CancellationProof = null, Printed = RecordedDate.Read("2027-01") };
        var work = Harbour.Clean().WithMatrix(matrix => matrix with { Reduction = "no", Fate = "cancelled" });

        Assert.Empty(Findings(work with { Runs = [work.Runs[0] with { Printed = RecordedDate.Read("2026-02-01") }, proof, restrike] }));
    }

    private static Pass[] Good() => [OnePass.Of(1, 19, 0, 17, 1, 1).From(5, 501), OnePass.Of(2, 17, 0, 16, 1, 0).From(5, 502)];

    private static Work WithPasses(Pass[] passes) => Harbour.Clean()
        .WithMatrix(matrix => matrix with { States = [new MatrixState(501, 1, 1, "I", RecordedDate.Read("2026-01-30"), null), new MatrixState(502, 1, 2, "II", RecordedDate.Read("2026-02-10"), null)] })
        .WithRun(run => run with { Passes = passes });

    private static List<Finding> Findings(Work work) => [.. Rules.All.SelectMany(rule => rule.Check(work))];

    private static IEnumerable<string> Messages(Work work, Severity severity) => Findings(work).Where(finding => finding.Severity == severity).Select(finding => finding.Message);
}
