using EditionRegister.Domain;
using EditionRegister.Domain.Impressions;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Documents;

/// <summary>The sheets of a choice; a place or a list in which nothing is has none, and a room says so in its own words.</summary>
internal static class SheetsAmong
{
    /// <exception cref="RefusedException">Something named is not there.</exception>
    public static IReadOnlyList<Impression> Of(Register register, ImpressionChoice choice)
    {
        try
        {
            return [.. register.LookAround.Chosen(choice).SelectMany(chosen => chosen.Sheets)];
        }
        catch (RefusedException refusal) when (refusal.Name == "nothing-chosen")
        {
            return [];
        }
    }
}
