using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

// In a reduction print the block is destroyed by printing: common practice, no source.
public class ReductionsAreNotReprintedTests
{
    private static readonly Work Clean = Harbour.Clean();

    [Fact]
    public void A_second_edition_from_a_block_cut_away()
    {
        var message = "Print run 2 of “Harbour” was printed 2027, after the block was cut away (2026-02-20).";

        Assert.Equal([$"Contradiction: {message}"], FindingsOf.Rule("ReductionsAreNotReprinted", Second(Clean, "edition", "2027")));
        Assert.Equal([$"Query: {message}"], FindingsOf.Rule("ReductionsAreNotReprinted", Second(Clean with { Matrices = [.. Clean.Matrices, Clean.Matrices[0] with { Id = 6, Fate = "unknown" }] }, "edition", "2027")));
    }

    [Fact]
    public void A_second_edition_where_nobody_noted_when_the_block_was_cut()
    {
        var work = Second(Clean.WithMatrix(matrix => matrix with { FateDate = RecordedDate.None }), "edition", "2027");

        Assert.Equal(
            ["Contradiction: Print run 2 of “Harbour” was printed 2027, but the block was cut away when print run 1 was printed (2026-02-01/2026-03-01)."],
            FindingsOf.Rule("ReductionsAreNotReprinted", work));
    }

    [Fact]
    public void A_restrike_without_a_date()
    {
        Assert.Equal(
            ["Query: Print run 2 of “Harbour” is a restrike, but the block was cut away in printing."],
            FindingsOf.Rule("ReductionsAreNotReprinted", Second(Clean, "restrike", null)));
    }

    [Theory]
    [InlineData("cancelled", "cancelled")]
    [InlineData("cut-up", "cut up")]
    [InlineData("regrained-or-reclaimed", "regrained or reclaimed")]
    public void An_edition_printed_after_the_end_of_its_matrix(string fate, string words)
    {
        var work = Clean.WithMatrix(matrix => matrix with { What = "stone", Reduction = "no", Fate = fate, FateDate = Harbour.On("2026-01-15") });

        Assert.Equal(
            [$"Contradiction: Print run 1 of “Harbour” was printed 2026-02-01/2026-03-01, after the stone was {words} (2026-01-15)."],
            FindingsOf.Rule("ReductionsAreNotReprinted", work));
    }

    // The last cut comes before the last colour, two papers may be printed side by side, and a cancellation proof comes after the cancelling.
    [Fact]
    public void Good_practice_is_no_finding()
    {
        Assert.Empty(FindingsOf.Rule("ReductionsAreNotReprinted", Clean.WithMatrix(matrix => matrix with { FateDate = Harbour.On("2026-01-31") })));
        Assert.Empty(FindingsOf.Rule("ReductionsAreNotReprinted", Second(Clean.WithMatrix(matrix => matrix with { FateDate = RecordedDate.None }), "edition", "2026-02-10/2026-03-02")));
        Assert.Empty(FindingsOf.Rule("ReductionsAreNotReprinted", Second(Clean, "proofing", "2027")));
        Assert.Empty(FindingsOf.Rule("ReductionsAreNotReprinted", Second(Clean.WithMatrix(matrix => matrix with { Reduction = "no", Fate = "kept-uncancelled" }), "edition", "2027")));
    }

    private static Work Second(Work work, string purpose, string? printed) =>
        work with { Runs = [.. work.Runs, work.Runs[0] with { Id = 8, Ordinal = 2, Purpose = purpose, Printed = RecordedDate.Read(printed) }] };
}
