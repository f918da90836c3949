using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Tests.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Works;

/// <summary>Which runs can be printed from the blocks of a work, and which cannot.</summary>
public sealed class RunsPossibleTests
{
    [Fact]
    public void A_block_beside_a_reduction_does_not_print_the_edition_again()
    {
        var work = Beside(Harbour.Clean());

        var refused = Assert.Throws<RefusedException>(() => Record(work, new NewPrintRun { Purpose = "edition", Pile = 4 }));

        Assert.Equal(
            "“Harbour” is in part a reduction print and was printed in run 1 (2026-02-01/2026-03-01): block 5 was cut away in printing, so it cannot be printed again, and the others alone give another image. "
            + "Nothing was changed. A new image cut from what is left of the block is a work of its own.",
            refused.Message);
    }

    [Fact]
    public void A_trial_from_the_blocks_that_are_left_is_recorded() =>
        Assert.Equal(1, Record(Beside(Harbour.Clean()), new NewPrintRun { Purpose = "proofing", Pile = 1, Printed = RecordedDate.Read("2026-05") }));

    [Theory]
    [InlineData("proofing", true)]
    [InlineData("restrike", false)]
    public void A_cancelled_block_prints_the_proof_of_it_and_a_disclosed_restrike(string purpose, bool isProof) =>
        Assert.Equal(1, Record(Cancelled(), new NewPrintRun { Purpose = purpose, IsCancellationProof = isProof, Pile = 1, Printed = RecordedDate.Read("2026-05") }));

    [Fact]
    public void A_cancelled_block_prints_no_other_proof() =>
        Assert.Equal("matrix-cannot-print", Assert.Throws<RefusedException>(() => Record(Cancelled(), new NewPrintRun { Purpose = "proofing", Pile = 1, Printed = RecordedDate.Read("2026-05") })).Name);

    // (20 - 2 - 1) x 2 = 34.
    [Fact]
    public void Sheets_printed_two_up_make_a_pile_of_twice_as_many() =>
        Assert.Equal(34, Record(Cancelled(), new NewPrintRun { Purpose = "restrike", Started = 20, Spoiled = 2, Unused = 1, CutInto = 2 }));

    // (20 - 2) / 2 = 9.
    [Fact]
    public void Sheets_of_a_diptych_make_a_pile_of_half_as_many() =>
        Assert.Equal(9, Record(Cancelled(), new NewPrintRun { Purpose = "restrike", Started = 20, Spoiled = 2, MadeOf = 2 }));

    [Fact]
    public void A_run_after_the_makers_death_is_a_fact_and_no_fault()
    {
        Deed deed = new(Root.Work(17), _ => 50);

        new NewPrintRun { Purpose = "restrike", Pile = 0, Posthumous = "yes" }.Record(Cancelled(), Code, deed);

        Assert.Contains(deed.Sets, row => row.Table.Name == "print_run" && row.Values.Any(set => set.Fact.Name == "posthumous" && set.Value.Text == "yes"));
    }

    private static Work Cancelled() => Harbour.Clean().WithMatrix(matrix => matrix with { Reduction = "no", Fate = "cancelled" });

    private static Work Beside(Work work) => work with { Matrices = [.. work.Matrices, work.Matrices[0] with { Id = 6, Reduction = "no", Fate = "undecided", FateDate = RecordedDate.None }] };

    private static int Record(Work work, NewPrintRun run)
    {
        var next = 1_000L;
        Deed deed = new(Root.Work(work.Id), _ => next++);

        return run.Record(work, Code, deed).Count;
    }

    private static RegisterCode Code() => RegisterCode.Draw(_ => 5);
}
