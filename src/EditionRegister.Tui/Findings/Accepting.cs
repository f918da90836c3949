using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Integrity;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.Findings;

/// <summary>Accepting a finding with a reason, and taking that back; what was checked is kept in step, so that nothing is checked twice for it.</summary>
internal sealed class Accepting(Desk desk, Checking checking)
{
    private const string Reason = "Reason";

    public Form Form(Finding finding) => new($"Accept what was found of {finding.Subject}", [
        new Field(Reason) { IsNeeded = true, Form = "why it may stand: counted again, the printer's list was wrong" },
    ], async form => new Saved(await AcceptAsync(finding, form[Reason]!)) { Undo = new Undoing("the acceptance", () => TakeBackAsync(finding)) })
    {
        Name = "accept a finding",
        About = [finding.Message],
        Caution = "It stays on record with your reason, counts no more, and returns when its facts change. Accept nothing that is merely not looked into yet.",
    };

    public Question AskToTakeBack(Finding finding) => Question.YesNo($"Take the acceptance back? What was found of {finding.Subject} counts again.", "take it back", async () =>
    {
        desk.Say(await TakeBackAsync(finding), Tone.Good);
        desk.Undo = finding.Accepted is { } accepted ? new Undoing("taking it back", () => AcceptAsync(finding with { Accepted = null }, accepted.Reason)) : null;

        return null;
    });

    private async Task<string> AcceptAsync(Finding finding, string reason)
    {
        var (_, before, after, by) = await desk.Store.Do(register => Written(register, () => register.AcceptFinding.Run(finding.Handle!, reason)));
        Acceptance acceptance = new(0, reason, RecordedDate.On(desk.Today), by);
        KeepInStep(before, after, last => last.WithAccepted(finding, acceptance, after));

        return $"{FindingsSaid.Accepted(finding)}.";
    }

    private async Task<string> TakeBackAsync(Finding finding)
    {
        var (_, before, after, _) = await desk.Store.Do(register => Written(register, () => register.TakeAcceptanceBack.Run(finding.Handle!)));
        KeepInStep(before, after, last => last.WithTakenBack(finding, after));

        return FindingsSaid.TakenBack(finding);
    }

    /// <summary>Only where nothing but this one entry was written since the check is what it found still all there is.</summary>
    private void KeepInStep(LogbookHead before, LogbookHead after, Func<Checked, Checked> changed)
    {
        if (checking is { IsUnderway: false, Last: { } last } && last.Head == before && after.N == before.N + 1)
        {
            checking.Last = changed(last);
        }
    }

    private static (Finding Finding, LogbookHead Before, LogbookHead After, string? By) Written(Register register, Func<Finding> deed)
    {
        var before = register.LookAround.Head();
        var finding = deed();
        var by = register.LookAround.LogbookPage(new LogbookWanted { Take = 1 }).Page is [var entry] ? entry.ByName : null;

        return (finding, before, register.LookAround.Head(), by);
    }
}
