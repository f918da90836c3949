namespace EditionRegister.Domain.Reading.Dates;

/// <summary>One date or span met in a text, in years, with its form in EDTF where it has one.</summary>
internal readonly record struct DateSpanRead(int Earliest, int Latest, string? Edtf, int Next)
{
    public bool IsOpenBefore { get; init; }

    public bool IsOpenAfter { get; init; }

    /// <summary>Nothing but four digits: the 07 of 1903-07 is read beside it.</summary>
    public bool IsPlainYear { get; init; }
}
