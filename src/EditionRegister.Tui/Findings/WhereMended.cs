using EditionRegister.Domain.Integrity;
using EditionRegister.Tui.AddressBook;
using EditionRegister.Tui.Bench;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.PlanChest;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.Registers;

namespace EditionRegister.Tui.Findings;

/// <summary>The page on which what was found is put right; Esc there comes back to the findings.</summary>
internal static class WhereMended
{
    public static async Task<Opening?> OpenAsync(Desk desk, Finding finding)
    {
        if (finding.Handle is null)
        {
            return FileFinding.Page(finding, await desk.Store.Do(register => Backups.Newest(register.Folder)));
        }

        switch (finding.Subject)
        {
            case { Kind: "person", Id: var person }:
                return new PersonPage(desk, person);
            case { Kind: "place", Id: var place }:
                return new PlacePage(desk, place);
            default:
                var where = await desk.Store.Do(register => register.LookAround.PlaceOf(finding.Subject));

                if (where is null)
                {
                    desk.Say($"{finding.Subject} is no longer in the register. Press c to check again.", Tone.Warning);
                }

                return where is null ? null : PageOf(desk, where);
        }
    }

    private static Page PageOf(Desk desk, SubjectPlace where) =>
        where.Code is { } code ? new ImpressionPage(desk, code)
        : where.Edition is { } edition ? new EditionPage(desk, edition)
        : new WorkPage(desk, where.Work!.Value);
}
