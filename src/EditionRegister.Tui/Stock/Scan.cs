using EditionRegister.Domain.Stock;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.Stock;

/// <summary>One code as it was scanned: what it came to, and what bears it.</summary>
/// <param name="Code">As people see it.</param>
/// <param name="Outcome">present, stranger or not-ours.</param>
/// <param name="Named">What bears it, or null.</param>
internal sealed record Scan(string Code, string Outcome, StockNamed? Named)
{
    public string What => Named?.Called ?? "a code this register never gave";

    public Pages.Tone Tone => Outcome == StockOutcome.Present ? Pages.Tone.Good : Outcome == StockOutcome.Stranger ? Pages.Tone.Warning : Pages.Tone.Bad;
}
