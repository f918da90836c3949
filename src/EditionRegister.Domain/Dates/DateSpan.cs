namespace EditionRegister.Domain.Dates;

/// <summary>From the earliest to the latest day something can have been, both included; a bound not known is null.</summary>
public readonly record struct DateSpan(DateOnly? Earliest, DateOnly? Latest)
{
    /// <summary>Every day of this lies before every day of the other. False as soon as a bound that decides it is not known.</summary>
    public bool SurelyBefore(DateSpan other) => Latest < other.Earliest;

    /// <summary>Some day of this may lie before some day of the other. True where a bound that decides it is not known.</summary>
    public bool PossiblyBefore(DateSpan other) => Earliest is null || other.Latest is null || Earliest < other.Latest;
}
