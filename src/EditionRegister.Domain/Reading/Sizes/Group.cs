using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>Lengths joined by × that share a unit: 300 × 225 mm, 22 in. x 20 in., 17 x 13 3/4".</summary>
internal readonly record struct Group
{
    private readonly LengthRead _first;
    private readonly LengthRead _second;
    private readonly LengthRead _third;
    private readonly LengthUnit _unit;

    private Group(LengthRead first, LengthRead second, LengthRead third, int count, LengthUnit unit, int next)
    {
        (_first, _second, _third, _unit) = (first, second, third, unit);
        Count = count;
        Next = next;
    }

    public int Count { get; }

    public int Next { get; }

    public bool IsMetric => _unit is LengthUnit.Millimetre or LengthUnit.Centimetre or LengthUnit.Metre;

    /// <summary>Micrometres.</summary>
    public long this[int place] => Of(place).Micrometres(UnitOf(place));

    public static Group? At(TokenText text, int at)
    {
        if (Lengths.At(text, at) is not { } first)
        {
            return null;
        }

        var (second, third, count, next) = (default(LengthRead), default(LengthRead), 1, first.Next);

        if (IsTimes(text, next) && Lengths.At(text, next + 1) is { } then)
        {
            (second, count, next) = (then, 2, then.Next);

            if (IsTimes(text, next) && Lengths.At(text, next + 1) is { } last)
            {
                (third, count, next) = (last, 3, last.Next);
            }
        }

        var unit = count == 3 && third.Unit != LengthUnit.None ? third.Unit : count >= 2 && second.Unit != LengthUnit.None ? second.Unit : first.Unit;

        return unit == LengthUnit.None ? null : new Group(first, second, third, count, unit, next);
    }

    /// <summary>The smallest step a length is written in, in micrometres.</summary>
    public long Step(int place) => Of(place).StepMicrometres(UnitOf(place));

    private static bool IsTimes(TokenText text, int at) => text.IsWord(at, "x") || text.IsSign(at, '×') || text.IsWord(at, "by");

    private LengthRead Of(int place) => place switch { 0 => _first, 1 => _second, _ => _third };

    private LengthUnit UnitOf(int place) => Of(place).Unit is not LengthUnit.None and var own ? own : _unit;
}
