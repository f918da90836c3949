using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Chains;

/// <summary>What a step of a sheet's whereabouts should say; null leaves a fact as it is.</summary>
public sealed record MoveCorrection
{
    public MoveKind? Kind { get; init; }

    public Position? To { get; init; }

    public RecordedDate? Date { get; init; }

    public RecordedDate? Until { get; init; }

    /// <summary>In hundredths of a per cent.</summary>
    public int? Rate { get; init; }

    public string? Agreement { get; init; }

    public string? Note { get; init; }
}

/// <summary>What a step of a sheet's ownership should say; null leaves a fact as it is. Amounts are minor units of the currency.</summary>
public sealed record TransferCorrection
{
    public MoveKind? Kind { get; init; }

    public Owner? To { get; init; }

    public RecordedDate? Date { get; init; }

    public long? Agent { get; init; }

    public long? Price { get; init; }

    public long? Net { get; init; }

    /// <summary>ISO 4217.</summary>
    public string? Currency { get; init; }

    public string? Note { get; init; }
}
