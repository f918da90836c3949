using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>Lengths that belong together: 300 × 225 mm, 22 in. x 20 in., H. 12 in.; W. 9 in. Two or three of one thing, or one alone.</summary>
internal sealed record Group(IReadOnlyList<LengthRead> Measures, LengthUnit Unit, SizeFault Fault, int Start, int Next)
{
    private const int Most = 3;

    /// <summary>A unit is written, or assumed; then it is a size, or would be one but for its fault.</summary>
    public bool HasUnit => Unit != LengthUnit.None;

    public int Count => Measures.Count;

    public bool IsMetric => Units.IsMetric(Unit);

    /// <summary>Each length tells its own direction.</summary>
    public bool IsLabelled => Measures.All(length => length.Direction != Direction.NotSaid);

    /// <summary>The finest step any of them is written in, in micrometres: all were taken with one ruler.</summary>
    public long Step => Enumerable.Range(0, Count).Min(place => Measures[place].Figure.StepMicrometres(UnitOf(place)));

    /// <summary>Micrometres.</summary>
    public long this[int place] => Measures[place].Figure.In(UnitOf(place)).Micrometres(UnitOf(place));

    /// <summary>Null where no figure stands.</summary>
    public static Group? At(TokenText text, int at)
    {
        if (Lengths.At(text, at) is not { } first)
        {
            return null;
        }

        List<LengthRead> lengths = [first];
        var next = first.Next;
        var isTooMany = false;

        while (NextOf(text, next, lengths) is { } more)
        {
            isTooMany |= lengths.Count == Most;
            next = more.Next;

            if (!isTooMany)
            {
                lengths.Add(more);
            }
        }

        // "12 x 9 in all" is a size even so; "12 in all" is not.
        var last = lengths.Count > 1 && lengths[^1].Unit == LengthUnit.None ? Units.At(text, next, out next) : LengthUnit.None;
        var unit = lengths.FindLast(length => length.Unit != LengthUnit.None).Unit is not LengthUnit.None and var own && last == LengthUnit.None ? own : last;

        return new Group(lengths, LengthUnit.None, isTooMany ? SizeFault.TooMany : SizeFault.None, at, next).In(unit);
    }

    /// <summary>The same lengths, in a unit that is assumed or was found out.</summary>
    public Group In(LengthUnit unit)
    {
        var group = this with { Unit = unit };

        return group with { Fault = Fault is SizeFault.None or SizeFault.NoUnit ? group.FaultFound() : Fault };
    }

    public LengthUnit UnitOf(int place) => Measures[place].Unit is not LengthUnit.None and var own ? own : Unit;

    private SizeFault FaultFound()
    {
        // 3 300 x 225 may be the third, of 300 x 225.
        var isLoneSpace = Measures[0].Figure.IsSpaced && Measures.Count(length => length.Figure.IsSpaced) == 1;

        for (var place = 0; place < Count; place++)
        {
            if (Measures[place].Figure.In(UnitOf(place)).Fault is not SizeFault.None and var fault)
            {
                return HasUnit || fault != SizeFault.TwoReadings ? fault : SizeFault.NoUnit;
            }

            if (HasUnit && this[place] is < 1 or > Domain.Sizes.Length.Largest)
            {
                return this[place] < 1 ? SizeFault.Nothing : SizeFault.TooLarge;
            }
        }

        return !HasUnit ? SizeFault.NoUnit : isLoneSpace ? SizeFault.TwoReadings : IsTwiceSaid() ? SizeFault.TooMany : SizeFault.None;
    }

    private bool IsTwiceSaid() => IsLabelled && Measures.Select(length => length.Direction).Distinct().Count() < Count;

    private static LengthRead? NextOf(TokenText text, int at, List<LengthRead> before)
    {
        if (Lengths.IsTimes(text, at) && Lengths.At(text, at + 1) is { } times)
        {
            return Lengths.Within(text, at) is not Direction.NotSaid and var within && times.Direction == Direction.NotSaid ? times with { Direction = within } : times;
        }

        // H. 12 in.; W. 9 in.: only a length with another direction of its own goes on without ×.
        var label = text.IsAnySign(at, ",;/") || text.Word(at) is "and" or "und" or "et" or "e" or "y" ? at + 1 : at;

        return IsOneOfSeveral(before[^1].Direction) && Lengths.At(text, label) is { } other && IsOneOfSeveral(other.Direction) && before.TrueForAll(length => length.Direction != other.Direction) ? other : null;
    }

    private static bool IsOneOfSeveral(Direction direction) => direction is not (Direction.NotSaid or Direction.Diameter);
}
