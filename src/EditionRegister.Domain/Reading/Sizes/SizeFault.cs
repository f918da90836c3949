namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>Why figures that look like a size are not read as one.</summary>
internal enum SizeFault : byte
{
    None,

    /// <summary>310 x 220, and nobody says of what.</summary>
    NoUnit,

    /// <summary>7 71/6, 9/6, 25 1/18: on no ruler.</summary>
    NoFraction,

    /// <summary>1,220 cm.</summary>
    TwoReadings,

    /// <summary>30-32 x 20 cm.</summary>
    ARange,

    /// <summary>0 x 30 cm.</summary>
    Nothing,

    /// <summary>More than 100 metres, or more digits than any length has.</summary>
    TooLarge,

    /// <summary>More lengths than a thing has, or one direction told twice.</summary>
    TooMany,
}
