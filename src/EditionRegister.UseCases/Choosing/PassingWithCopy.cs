using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.UseCases.Choosing;

/// <summary>How what was chosen passes to another owner. What only goes with a copy may be its maker's still, and not who hands on the copy; and the new owner may own some of it already, as in an exchange.</summary>
internal static class PassingWithCopy
{
    /// <summary>The sheets that pass on, by whom they pass from; null is the maker.</summary>
    public static IEnumerable<(IReadOnlyList<Impression> Sheets, long? From)> Of(ChosenOfWork chosen, long? from, long? to)
    {
        if (!chosen.GoWithCopy)
        {
            return [(chosen.Sheets, from)];
        }

        var passing = chosen.Sheets.Except(Theirs(chosen, to)).ToLookup(sheet => sheet.Whose?.Person == from);

        return [([.. passing[true]], from), ([.. passing[false]], null)];
    }

    /// <summary>What goes with a copy and belongs to its new owner already: there is nothing to pass on, only to hand over.</summary>
    public static IReadOnlyList<Impression> Theirs(ChosenOfWork chosen, long? to) =>
        chosen.GoWithCopy && to is { } owner ? [.. chosen.Sheets.Where(sheet => sheet.Whose == Owner.Known(owner))] : [];
}
