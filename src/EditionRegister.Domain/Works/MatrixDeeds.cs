using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Domain.Works;

/// <summary>Recording what a work is printed from, and what becomes of it.</summary>
public static class MatrixDeeds
{
    public static IReadOnlyList<string> Kinds { get; } = ["block", "plate", "stone", "screen", "stencil", "other"];

    public static IReadOnlyList<string> Fates { get; } =
    [
        "undecided", "cut-away-in-printing", "cancelled", "kept-uncancelled", "regrained-or-reclaimed", "cut-up", "lost", "given-away", "unknown",
    ];

    /// <summary>Fates after which the matrix can print no more.</summary>
    public static bool IsFinal(string fate) => fate is "cut-away-in-printing" or "cancelled" or "regrained-or-reclaimed" or "cut-up";

    public static long Record(Work work, string what, string? material, string reduction, RecordedDate made, Deed deed)
    {
        var id = deed.NewId("matrix");
        deed.Set("matrix", id, ("work", work.Id), ("what", what), ("material", material), ("reduction", reduction), ("fate", "undecided"));
        deed.SetDate("matrix", id, "made", made);

        return id;
    }

    /// <exception cref="RefusedException">matrix-not-found, fate-stated-already or fate-needs-reduction.</exception>
    public static void StateFate(Work work, long matrixId, string fate, RecordedDate date, string? note, bool correct, Deed deed)
    {
        var matrix = work.Matrices.FirstOrDefault(found => found.Id == matrixId) ?? throw WorkRefusals.NoSuchMatrix(work, matrixId);

        if (!correct && (IsFinal(matrix.Fate) || matrix.Fate is "lost" or "given-away"))
        {
            throw WorkRefusals.FateStated(matrix);
        }

        if (fate == "cut-away-in-printing" && !matrix.IsReduction)
        {
            throw WorkRefusals.NotAReduction(matrix);
        }

        deed.Set("matrix", matrix.Id, ("fate", fate), ("fate_note", note));
        deed.SetDate("matrix", matrix.Id, "fate_date", "fate", date);
    }
}
