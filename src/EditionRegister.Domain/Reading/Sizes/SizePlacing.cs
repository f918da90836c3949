namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>Puts lengths where they belong: as each of them says, as was said of their order, or height before width before depth.</summary>
internal static class SizePlacing
{
    public static Measured Of(SizePair pair, IReadOnlyList<Direction>? order, bool isRound)
    {
        var kept = pair.Second is { IsMetric: true } metric ? metric : pair.First;
        var directions = DirectionsOf(pair.First.IsLabelled ? pair.First : kept, order);

        var isAcross = kept.Count == 1 && (directions[0] == Direction.Diameter || (isRound && directions[0] == Direction.NotSaid));

        return With(pair, Placed(kept, directions), isAcross) with
        {
            IsOneLength = kept.Count == 1 && !isAcross && directions[0] == Direction.NotSaid,
        };
    }

    private static Measured With(SizePair pair, (long? Height, long? Width, long? Depth) placed, bool isRound)
    {
        var (apart, tolerance) = pair.Second is { } second ? (Tolerance.Apart(pair.First, second), Tolerance.Of(pair.First, second)) : ((long?)null, (long?)null);

        return new Measured(pair.First, pair.Second)
        {
            Height = placed.Height,
            Width = isRound ? placed.Height : placed.Width,
            Depth = placed.Depth,
            IsDiameter = isRound,
            Agreement = apart is null ? Agreement.OneSystem : apart <= tolerance ? Agreement.Agree : Agreement.Differ,
            Apart = apart,
            Tolerance = tolerance,
            IsTurned = pair.Second is { } other && apart > tolerance && Tolerance.IsTurned(pair.First, other),
        };
    }

    private static List<Direction> DirectionsOf(Group group, IReadOnlyList<Direction>? order)
    {
        List<Direction> said = group.IsLabelled ? [.. group.Measures.Select(length => length.Direction)]
            : order?.Count == group.Count ? [.. order]
            : group.Count == 1 ? [Direction.NotSaid]
            : [.. new[] { Direction.Height, Direction.Width, Direction.Depth }.Take(group.Count)];

        // The long one beside a height is the width, as in H. and L. of a French catalogue; beside a width it is the height.
        return said.ConvertAll(direction => direction != Direction.Long ? direction : said.Contains(Direction.Height) ? Direction.Width : Direction.Height);
    }

    private static (long? Height, long? Width, long? Depth) Placed(Group group, List<Direction> directions)
    {
        long? At(Direction direction) => directions.IndexOf(direction) is >= 0 and var place ? group[place] : null;

        return (At(Direction.Height) ?? At(Direction.Diameter) ?? At(Direction.NotSaid), At(Direction.Width), At(Direction.Depth));
    }
}
