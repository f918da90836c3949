using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Impressions;

/// <summary>Says that a sheet is the ghost of another: pulled after it from the same plate, without inking it anew.</summary>
public sealed class LinkGhost(RegisterStore store)
{
    /// <param name="ghost">The code of the paler sheet.</param>
    /// <param name="print">The code of the sheet pulled before it.</param>
    /// <param name="made">When it was pulled, or null where nobody says.</param>
    /// <param name="note">As written.</param>
    /// <exception cref="Domain.RefusedException">One of <see cref="GhostRefusals"/>, code-not-found or code-misread.</exception>
    public bool Run(string ghost, string print, RecordedDate? made = null, string? note = null) => store.Write("link-ghost", writing =>
    {
        var (work, sheet) = Of(writing, ghost);
        var (itsWork, other) = Of(writing, print);

        if (itsWork.Id != work.Id)
        {
            throw GhostRefusals.OfAnotherWork(sheet, work, other);
        }

        Ghosts.Record(work, sheet, other, made ?? RecordedDate.None, note, writing.On(Root.Work(work.Id)));

        return true;
    });

    /// <summary>It was recorded by mistake.</summary>
    /// <exception cref="Domain.RefusedException">ghost-of-nothing.</exception>
    public bool TakeBack(string ghost) => store.Write("take-ghost-back", writing =>
    {
        var (work, sheet) = Of(writing, ghost);
        Ghosts.TakeBack(sheet, writing.On(Root.Work(work.Id)));

        return true;
    });

    private static (Domain.Works.Work Work, Impression Sheet) Of(Store.Logbook.Writing writing, string code)
    {
        var chosen = ImpressionsChosen.Find(writing.Read, ImpressionChoice.OfCode(code))[0];

        return (chosen.Work, chosen.Sheets[0]);
    }
}
