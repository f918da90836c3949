using EditionRegister.Domain.Impressions;

namespace EditionRegister.UseCases.Impressions;

/// <summary>Sheets as somebody saw them before they began to change them: what another has changed since is refused with both values.</summary>
public sealed class SheetsAsSeen
{
    private readonly Dictionary<long, long> _seen;

    /// <param name="sheets">As they were read.</param>
    public SheetsAsSeen(IEnumerable<Impression> sheets) => _seen = sheets.ToDictionary(sheet => sheet.Id, sheet => sheet.V);

    /// <exception cref="Domain.RefusedException">changed-meanwhile, about the first fact of those wanted that is not as wanted.</exception>
    internal void Demand(Impression sheet, params ReadOnlySpan<(string Fact, string? Now, string? Wanted)> facts)
    {
        if (!_seen.TryGetValue(sheet.Id, out var v) || v == sheet.V)
        {
            return;
        }

        foreach (var (fact, now, wanted) in facts)
        {
            if (wanted is not null && now != wanted)
            {
                throw ImpressionRefusals.ChangedMeanwhile(sheet, fact, now is null ? "not recorded" : $"“{now}”", $"“{wanted}”");
            }
        }
    }
}
