using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>A length as it stands in a text: its figure, its unit and direction where it has its own, and the token after it.</summary>
internal readonly record struct LengthRead(Figure Figure, LengthUnit Unit, Direction Direction, int Next);

/// <summary>Reads one length, and what joins it to the next.</summary>
internal static class Lengths
{
    public static LengthRead? At(TokenText text, int at)
    {
        var direction = Directions.Before(text, at, out var start);

        if (Figures.At(text, direction == Direction.NotSaid ? at : start) is not { } figure)
        {
            return null;
        }

        var read = WithUnit(text, figure);

        return direction != Direction.NotSaid ? read with { Direction = direction }
            : Directions.After(text, read.Next, out var after) is not Direction.NotSaid and var behind ? read with { Direction = behind, Next = after }
            : read;
    }

    private static LengthRead WithUnit(TokenText text, Figure figure)
    {
        var unit = Units.At(text, figure.Next, out var next);

        return unit == LengthUnit.Foot && InchesBehind(text, figure, next) is { } inches ? inches
            : unit == LengthUnit.None || IsPreposition(text, figure.Next, next) ? new LengthRead(figure, LengthUnit.None, Direction.NotSaid, figure.Next)
            : new LengthRead(figure, unit, Direction.NotSaid, next);
    }

    /// <summary>x, ×, by and their like; in xW the direction of the next length stands behind it.</summary>
    public static bool IsTimes(TokenText text, int at) =>
        text.IsAnySign(at, "\u00D7*\u2715\u2716\u2A2F") || text.Word(at) is "x" or "by" or "mal" or "par" or "por" or "xh" or "xw" or "xd" or "xl" or "xb" or "xt";

    /// <summary>The direction that stands in xW.</summary>
    public static Direction Within(TokenText text, int at) => text.Word(at) is ['x', var letter] ? Directions.Of([letter]) : Direction.NotSaid;

    /// <summary>5' 3", 5 ft. 3 1/2 in., 5'-3".</summary>
    private static LengthRead? InchesBehind(TokenText text, Figure feet, int at)
    {
        var start = text.IsSign(at, '-') ? at + 1 : at;

        return feet is { Fault: SizeFault.None, Below: 1, IsGrouped: false } && Figures.At(text, start) is { Fault: SizeFault.None, IsGrouped: false } inches && Units.At(text, inches.Next, out var end) == LengthUnit.Inch
            ? new LengthRead(inches.WithFeet(feet.Above), LengthUnit.Inch, Direction.NotSaid, end)
            : null;
    }

    // "25 in all", "3 in this state": no inches. A point or what belongs to a size must follow.
    private static bool IsPreposition(TokenText text, int at, int next) =>
        text.Word(at) is "in" or "m" && next == at + 1 && (text.IsDigits(next) || (text.IsWord(next) && !IsOfASize(text, next)));

    private static bool IsOfASize(TokenText text, int at) =>
        IsTimes(text, at) || Directions.Of(text.Word(at)) != Direction.NotSaid || Hedges.At(text, at, out _) != Hedge.None || SizePart.At(text, at, out _) is not null || text.Word(at) is "and" or "or" or "und" or "et" or "each" or "square" or "ou" or "oder";
}
