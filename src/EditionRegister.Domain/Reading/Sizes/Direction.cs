using EditionRegister.Domain.Reading.Text;

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

/// <summary>Words and letters for directions: H., height, Höhe, haut.; W., larg.; Ø, diam.</summary>
internal static class Directions
{
    public static Direction Of(ReadOnlySpan<char> word) => word switch
    {
        "h" or "ht" or "hgt" or "height" or "high" or "hohe" or "hoch" or "haut" or "hauteur" or "altezza" or "alto" or "alt" or "altura" => Direction.Height,
        "w" or "wd" or "width" or "wide" or "breite" or "breit" or "b" or "larg" or "largeur" or "larghezza" or "largo" or "ancho" or "anchura" => Direction.Width,
        "d" or "dp" or "depth" or "deep" or "tiefe" or "tief" or "t" or "prof" or "profondeur" or "profondita" or "profundidad" => Direction.Depth,
        "l" or "length" or "long" or "lange" or "lang" or "longueur" or "lunghezza" or "longitud" => Direction.Long,
        "diam" or "diameter" or "diametre" or "diametro" or "durchmesser" or "dm" or "dia" or "\u00F8" => Direction.Diameter,
        _ => Direction.NotSaid,
    };

    /// <summary>One before a figure: H. 12, h: 12, height of 12, Ø 12, H12.</summary>
    public static Direction Before(TokenText text, int at, out int figure)
    {
        var (direction, next) = Labelled(text, at);
        figure = next;

        return direction != Direction.NotSaid && IsFigure(text, next) ? direction : Direction.NotSaid;
    }

    /// <summary>One behind a length: 12 in. high, 12" h, 12 cm (diam.).</summary>
    public static Direction After(TokenText text, int at, out int next)
    {
        var isBracketed = text.IsSign(at, '(');
        var word = isBracketed ? at + 1 : at;
        var direction = text.IsSign(word, '\u2300') ? Direction.Diameter : Of(text.Word(word));
        next = text.IsSign(word + 1, '.') && !text.IsApart(word + 1) ? word + 2 : word + 1;

        // A label before the next figure is not one behind this.
        if (direction == Direction.NotSaid || IsFigure(text, next) || text.IsAnySign(next, ":=") || (isBracketed && !text.IsSign(next, ')')))
        {
            next = at;

            return Direction.NotSaid;
        }

        next = isBracketed ? next + 1 : next;

        return direction;
    }

    /// <summary>The order of the lengths, said apart from them: H x W x D. Three at most; null where none is said.</summary>
    public static Direction[]? Order(TokenText text, int at, out int next)
    {
        List<Direction> order = [];
        next = at;

        while (order.Count < 3 && Of(text.Word(next)) is not (Direction.NotSaid or Direction.Diameter) and var direction)
        {
            order.Add(direction);
            next = text.IsSign(next + 1, '.') ? next + 2 : next + 1;

            if (!Lengths.IsTimes(text, next) || Of(text.Word(next + 1)) == Direction.NotSaid)
            {
                break;
            }

            next++;
        }

        return order.Count < 2 ? null : [.. order];
    }

    private static (Direction Direction, int Next) Labelled(TokenText text, int at)
    {
        if (text.IsSign(at, '\u2300'))
        {
            return (Direction.Diameter, at + 1);
        }

        var direction = Of(text.Word(at));
        var next = text.IsAnySign(at + 1, ".:=") ? at + 2 : text.IsWord(at + 1, "of") ? at + 2 : at + 1;

        return (direction, text.IsAnySign(next, ":=") ? next + 1 : next);
    }

    private static bool IsFigure(TokenText text, int at) => text.IsDigits(at) || (text.Written(at) is [var sign] && sign is >= '\u00BC' and <= '\u00BE' or >= '\u2150' and <= '\u215E');
}
