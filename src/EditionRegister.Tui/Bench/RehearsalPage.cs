using EditionRegister.Domain;
using EditionRegister.Domain.Editions;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Editions;

namespace EditionRegister.Tui.Bench;

/// <summary>A declaration before it is made: every pencil line, the totals and the certificate's sentences. Only y writes.</summary>
internal sealed class RehearsalPage(Desk desk, long work, NewEdition plan, Form form) : TextPage
{
    private DeclarationRehearsed? _rehearsed;
    private string? _refused;

    public override string Title => "Rehearsal";

    public override string Explains =>
        "This is what the declaration would come to; nothing of it is written yet. Each line is drawn as it will stand in pencil under the image: the number at the left, the title in the middle, "
        + "the signature at the right; the numbers are given as the pile lies, and you can still give them otherwise when you sign. Below stand the totals and what certificates will say. "
        + "y declares the edition as it stands here; Esc goes back to the form with everything you typed.";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        .. _rehearsed is null ? [] : new KeyDeed[] { new("y", "declare it so", DeclareAsync) },
        KeyDeed.Opens("Esc", "back to the form", () => new Back(form)),
    ];

    public override async Task RefreshAsync()
    {
        try
        {
            (_rehearsed, _refused) = (await desk.Store.Do(register => register.RehearseDeclaration.Run(work, plan)), null);
        }
        catch (RefusedException refusal)
        {
            // The register has changed since the form was filled in; the page says what is refused now.
            (_rehearsed, _refused) = (null, refusal.Message);
        }
    }

    public override IReadOnlyList<Line> Head(int width) => [Line.Of("Nothing is written yet. y declares it so, Esc goes back; Down reads on.", Tone.Warning), Line.Empty];

    public override IReadOnlyList<Line> Text(int width) =>
        _rehearsed is { } shown ? RehearsalText.Of(shown, width)
        : _refused is { } refused ? [.. Wrap.Of(refused, width).Select(line => Line.Of(line, Tone.Bad))]
        : [];

    private async Task<Opening?> DeclareAsync()
    {
        var (found, edition) = await desk.Store.Do(register =>
        {
            var id = register.DeclareEdition.Run(work, plan);

            return register.LookAround.Edition(id);
        });
        desk.Undo = null;
        desk.Say(EditionSaid.Spans("declared", found, edition), Tone.Good);

        return Back.Once;
    }
}
