namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>Which way a length goes, where that is said.</summary>
internal enum Direction : byte
{
    NotSaid,
    Height,
    Width,
    Depth,

    /// <summary>The long one: beside a height it is the width, beside a width the height.</summary>
    Long,
    Diameter,
}
