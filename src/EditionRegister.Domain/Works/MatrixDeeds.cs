using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;

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

    /// <summary>Gives a matrix its code, for ever.</summary>
    public static void GiveCode(long matrix, RegisterCode code, Deed deed) =>
        deed.Set("matrix_code", deed.NewId("matrix_code"), ("code", code.Text), ("matrix", matrix));

    /// <summary>Records that a matrix has come to another state.</summary>
    /// <returns>The id of the state.</returns>
    /// <exception cref="RefusedException">state-recorded-already, or states-run-back: it was reached surely before the state before it, or after the end of the matrix.</exception>
    public static long Reach(Matrix matrix, string name, RecordedDate reached, string? note, Deed deed)
    {
        if (matrix.States.FirstOrDefault(state => state.Name == name) is { } same)
        {
            throw WorkRefusals.StateRecorded(matrix, same);
        }

        if (matrix.States.FirstOrDefault(state => reached.SurelyBefore(state.Reached)) is { } later)
        {
            throw WorkRefusals.StateBefore(matrix, name, reached, later);
        }

        if (IsFinal(matrix.Fate) && matrix.FateDate.SurelyBefore(reached))
        {
            throw WorkRefusals.StateAfterFate(matrix, name, reached);
        }

        var id = deed.NewId("matrix_state");
        deed.Set("matrix_state", id,
            ("matrix", matrix.Id), ("ordinal", matrix.States.Count == 0 ? 1 : matrix.States.Max(state => state.Ordinal) + 1), ("name", name), ("note", note));
        deed.SetDate("matrix_state", id, "reached", reached);

        return id;
    }

    /// <param name="work">The work.</param>
    /// <param name="matrix">One of its matrices.</param>
    /// <param name="fate">One of <see cref="Fates"/>.</param>
    /// <param name="date">When.</param>
    /// <param name="note">As written.</param>
    /// <param name="proof">The impression that proves it, as one pulled from the cancelled plate.</param>
    /// <param name="correct">The fate on record was a mistake.</param>
    /// <param name="deed">Takes what is to be set.</param>
    /// <exception cref="RefusedException">fate-stated-already, fate-needs-reduction or proof-of-another-work.</exception>
    public static void StateFate(Work work, Matrix matrix, string fate, RecordedDate date, string? note, Impression? proof, bool correct, Deed deed)
    {
        if (!correct && (IsFinal(matrix.Fate) || matrix.Fate is "lost" or "given-away"))
        {
            throw WorkRefusals.FateStated(matrix);
        }

        if (fate == "cut-away-in-printing" && !matrix.IsReduction)
        {
            throw WorkRefusals.NotAReduction(matrix);
        }

        if (proof is not null && work.Impressions.All(sheet => sheet.Id != proof.Id))
        {
            throw WorkRefusals.ProofOfAnotherWork(work, matrix, proof);
        }

        deed.Set("matrix", matrix.Id, ("fate", fate), ("fate_note", note), ("fate_proof", proof?.Id));
        deed.SetDate("matrix", matrix.Id, "fate_date", "fate", date);
    }
}
