using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>Height, width and perhaps depth of one part as a text gives them, in micrometres; of two systems the metric one.</summary>
public sealed record Measured
{
    internal Measured(Group first, Group? second) => (First, Second) = (first, second);

    /// <summary>What is measured, of the closed list; several where one size is said to be of all of them, none where nothing or something else is said.</summary>
    public IReadOnlyList<SizePart> Parts { get; init; } = [];

    /// <summary>What is said to be measured, as written, in small letters; null where nothing is said.</summary>
    public string? Named { get; init; }

    /// <summary>The first part of the closed list, else the words as written, else null.</summary>
    public string? Part => Parts.Count > 0 ? Parts[0].Word : Named;

    /// <summary>Null where only another direction is given; one length without any direction is here.</summary>
    public long? Height { get; init; }

    public long? Width { get; init; }

    public long? Depth { get; init; }

    /// <summary>Round: height and width are the diameter.</summary>
    public bool IsDiameter { get; init; }

    /// <summary>Said to be about so much.</summary>
    public bool IsAbout { get; init; }

    public bool IsIrregular { get; init; }

    /// <summary>Whether two systems were given and say the same.</summary>
    public Agreement Agreement { get; init; }

    /// <summary>How far the two systems lie apart at most, in micrometres; null where there is one.</summary>
    public long? Apart { get; init; }

    /// <summary>How far rounding lets them lie apart, in micrometres, by the steps they are written in; null where there is one.</summary>
    public long? Tolerance { get; init; }

    /// <summary>Where in the text it was read.</summary>
    public Range Span { get; init; }

    /// <summary>As the register keeps sizes; null where height or width is not given.</summary>
    public Size? Size => Height is { } height && Width is { } width ? new Size(new Length(height), new Length(width)) : null;

    /// <summary>The lengths in their order.</summary>
    public IEnumerable<long> Lengths => new[] { Height, Width, Depth }.OfType<long>();

    /// <summary>A single length of which nobody says which way it goes.</summary>
    internal bool IsOneLength { get; init; }

    internal bool IsTurned { get; init; }

    /// <summary>As written first.</summary>
    internal Group First { get; }

    /// <summary>As written in the other system, or null.</summary>
    internal Group? Second { get; }

    /// <summary>How it was read, in a line beside the field: <c>15 3/4 × 11 7/8 in: 400 × 301.6 mm; in cm it says 40 × 30.2, which agrees</c>.</summary>
    public string Explain() => SizeInWords.Of(this);

    /// <summary>What a finding says where two systems differ; null where they do not.</summary>
    public string? Disagreement() => Agreement == Agreement.Differ ? SizeInWords.Disagreement(this) : null;
}
