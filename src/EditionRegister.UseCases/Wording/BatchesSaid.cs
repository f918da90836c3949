using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.UseCases.Wording;

/// <summary>What is said when a batch was undone.</summary>
public static class BatchesSaid
{
    public static string Undone(long batch, BatchUndone undone) =>
        undone.IsMade ? $"Batch {Counted.Figure(batch)} undone: {Counted.Of(undone.Impressions, "impression")} taken out again; their codes stay given."
        : undone.Impressions == 0 ? $"Batch {Counted.Figure(batch)} undone ({DeedInWords.Of(undone.Deed)})."
        : $"Batch {Counted.Figure(batch)} undone ({DeedInWords.Of(undone.Deed)}): {Counted.Of(undone.Impressions, "impression")} as before.";
}
