using EditionRegister.Domain.Impressions;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Impressions;

/// <summary>Grades sheets of a pile beside the guide sheet or the bon à tirer; a mark given again replaces the one before.</summary>
public sealed class GradeSheets(RegisterStore store)
{
    /// <summary>Answers how many sheets were graded.</summary>
    /// <param name="choice">Which sheets.</param>
    /// <param name="grade">How they look.</param>
    /// <param name="seen">The sheets as the caller saw them, or null when the caller did not look.</param>
    /// <exception cref="Domain.RefusedException">One of <see cref="GradingRefusals"/>, changed-meanwhile, or a choice that finds nothing.</exception>
    public int Run(ImpressionChoice choice, GradeGiven grade, GradesAsSeen? seen = null) => DeedOnChosen.Run(store, "grade", choice, (_, chosen, deed) =>
    {
        foreach (var sheet in chosen.Sheets)
        {
            seen?.Demand(sheet, grade);
        }

        grade.Record(chosen.Sheets, Today.Of(store), deed);
    });
}
