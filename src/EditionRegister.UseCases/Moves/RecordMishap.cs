using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Moves;

/// <summary>Records that sheets were lost, stolen or destroyed. Their numbers stay given.</summary>
public sealed class RecordMishap(RegisterStore store)
{
    /// <param name="choice">Which sheets.</param>
    /// <param name="kind">One of <see cref="Mishaps.Kinds"/>.</param>
    /// <param name="date">When; today when not said.</param>
    /// <param name="note">As written.</param>
    /// <exception cref="Domain.RefusedException">sheet-is-gone, sheet-is-missing, or dates that run backwards.</exception>
    public MishapRecorded Run(ImpressionChoice choice, MoveKind kind, RecordedDate? date = null, string? note = null)
    {
        List<string> withdrawn = [];
        var count = DeedOnChosen.Run(store, "record-mishap", choice, (_, chosen, deed) =>
            withdrawn.AddRange(Mishaps.Record(chosen.Work, chosen.Sheets, kind, date ?? Today.Of(store), note, deed)));

        return new MishapRecorded(count, withdrawn);
    }
}

/// <summary>How many sheets, and the certificates that are withdrawn with them.</summary>
public sealed record MishapRecorded(int Sheets, IReadOnlyList<string> Withdrawn);
