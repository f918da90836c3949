namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>From how many matrices a text says that the work is printed, and what they are: block, plate, stone or screen.</summary>
public readonly record struct MatrixCount(int Count, string Kind)
{
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Count} {Kind}{(Count == 1 ? "" : "s")}");
}
