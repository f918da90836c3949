namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>
/// How far two systems may lie apart and still say the same: one step of the coarser of them as they are written, and half a step of the
/// finer. That holds for rounding to the nearest, and for rounding one or both of them up, as the rules for cataloguing graphic materials
/// of the Library of Congress have it.
/// </summary>
internal static class Tolerance
{
    // The coarsest rounding in published rules: a quarter of an inch (CCO, LC Graphic Materials 3D2), a centimetre (LC Graphic Materials 3D2).
    private const long Quarter = 25_400 / 4;
    private const long Centimetre = 10_000;

    public static long Of(Group one, Group other) => Math.Max(StepOf(one), StepOf(other)) + (Math.Min(StepOf(one), StepOf(other)) / 2);

    /// <summary>The greatest distance of two lengths in the same place.</summary>
    public static long Apart(Group one, Group other) => Enumerable.Range(0, one.Count).Max(place => Math.Abs(one[place] - other[place]));

    /// <summary>Whether they agree once one of them is turned: width before height.</summary>
    public static bool IsTurned(Group one, Group other) => one.Count == 2 && Math.Max(Math.Abs(one[0] - other[1]), Math.Abs(one[1] - other[0])) <= Of(one, other);

    private static long StepOf(Group group) => Math.Min(group.Step, group.IsMetric ? Centimetre : Quarter);
}
