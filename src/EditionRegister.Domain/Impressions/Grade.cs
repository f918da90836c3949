using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Impressions;

/// <summary>How a sheet looks beside the guide sheet or the bon à tirer: each from 1, poor, to 5, as good as it gets; null where nobody looked.</summary>
public sealed record Grade
{
    public required long Id { get; init; }

    public required long V { get; init; }

    public int? Registration { get; init; }

    public int? Inking { get; init; }

    public int? Edges { get; init; }

    public int? Cleanness { get; init; }

    /// <summary>How near it comes to what it was held against.</summary>
    public int? Likeness { get; init; }

    /// <summary>guide-sheet, bon-a-tirer or unknown.</summary>
    public required string Against { get; init; }

    public required RecordedDate Graded { get; init; }

    public string? Note { get; init; }
}
