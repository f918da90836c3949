namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>What lengths are written in. An inch is 25.4 mm by definition.</summary>
public enum LengthUnit
{
    /// <summary>None is written, and none is to be assumed.</summary>
    None,
    Millimetre,
    Centimetre,
    Metre,
    Inch,
    Foot,
}
