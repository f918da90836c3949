namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>Height, width and perhaps depth of one part, in micrometres, as a text gives them.</summary>
/// <param name="Part">image, plate, block, sheet, frame …, as written in small letters; null where nothing is said.</param>
/// <param name="Height">The first length.</param>
/// <param name="Width">The second, or null where one length stands alone.</param>
/// <param name="Depth">The third, or null.</param>
/// <param name="Agreement">Whether two systems were given and say the same.</param>
/// <param name="Span">Where in the text it was read.</param>
public sealed record Measured(string? Part, long Height, long? Width, long? Depth, Agreement Agreement, Range Span)
{
    /// <summary>The lengths in their order.</summary>
    public IEnumerable<long> Lengths => new[] { Height, Width, Depth }.OfType<long>();
}

/// <summary>What two systems of measure, side by side, say of each other.</summary>
public enum Agreement
{
    /// <summary>Only one was given.</summary>
    OneSystem,

    /// <summary>They agree within what rounding explains.</summary>
    Agree,

    /// <summary>They differ by more than rounding explains: one of them is mistyped.</summary>
    Differ,
}
