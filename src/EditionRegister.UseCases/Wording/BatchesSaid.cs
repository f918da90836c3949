namespace EditionRegister.UseCases.Wording;

/// <summary>What is said when a batch was undone.</summary>
public static class BatchesSaid
{
    public static string Undone(long batch, int impressions) =>
        $"Batch {Counted.Figure(batch)} undone: {Counted.Of(impressions, "impression")} taken out again; their codes stay given.";
}
