using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Impressions;

/// <summary>Gives the number of a sheet that is damaged, destroyed or was never right to an unsigned spare.</summary>
public sealed class ReplaceSheet(RegisterStore store)
{
    /// <param name="old">The code of the sheet that loses its number.</param>
    /// <param name="spare">The code of the sheet that gets it.</param>
    /// <param name="replacement">Why and when; today when not said.</param>
    /// <exception cref="Domain.RefusedException">One of <see cref="ReplacementRefusals"/>, code-not-found or code-misread.</exception>
    public bool Run(string old, string spare, Replacement replacement) => store.Write("replace-sheet", writing =>
    {
        var one = ImpressionsChosen.Find(writing.Read, ImpressionChoice.OfCode(old))[0];
        var other = ImpressionsChosen.Find(writing.Read, ImpressionChoice.OfCode(spare))[0];

        if (other.Work.Id != one.Work.Id)
        {
            throw ReplacementRefusals.OfAnotherWork(one.Work, one.Sheets[0], other.Sheets[0]);
        }

        var dated = replacement.Date.IsKnown ? replacement : replacement with { Date = Today.Of(store) };
        dated.Record(one.Work, one.Sheets[0], other.Sheets[0], writing.On(Root.Work(one.Work.Id)));

        return true;
    });
}
