using EditionRegister.Domain.Editions;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>Opens the signing of an edition; where numbers are still to be given, the form for that comes first.</summary>
internal static class SigningOpening
{
    public static async Task<Opening?> OfAsync(Desk desk, long work, long edition)
    {
        var found = await desk.Store.Do(register => register.LookAround.Work(work));
        var declared = found.Editions.First(one => one.Id == edition);
        SigningPage page = new(desk, work, edition);

        return NumbersProposed.ForAll(found, declared).Count > 0 && !declared.IsClosed ? NumbersForm.New(desk, found, declared, page) : page;
    }
}
