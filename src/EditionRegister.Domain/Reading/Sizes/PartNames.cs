using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>What a size is said to be of: the parts of the closed list in it, and the words as written, in small letters.</summary>
/// <param name="Parts">None where only other words stand.</param>
/// <param name="Words">As written.</param>
/// <param name="Start">Its first token.</param>
/// <param name="Next">The token after it.</param>
internal sealed record PartName(IReadOnlyList<SizePart> Parts, string Words, int Start, int Next);

/// <summary>Finds the name of a size before it (image: 300 × 225 mm; Blatt 31 x 22 cm) or behind it (300 × 225 mm (image)).</summary>
internal static class PartNames
{
    private const int MostTokens = 12;
    private const int MostInBrackets = 40;

    /// <param name="text">The text.</param>
    /// <param name="at">The first token of the size.</param>
    /// <param name="floor">The token after the size before; names do not reach behind it.</param>
    public static PartName? Before(TokenText text, int at, int floor)
    {
        var end = at;

        while (end > floor && (text.Word(end - 1) is "each" or "je" or "chaque" or "ogni" or "cada" || Hedges.At(text, end - 1, out _) != Hedge.None || (text.IsSign(end - 1, '.') && end - 2 >= floor && Hedges.At(text, end - 2, out _) != Hedge.None)))
        {
            end--;
        }

        return end > floor && text.IsAnySign(end - 1, ":=") ? Announced(text, end - 1, floor) : Beside(text, end, floor);
    }

    /// <param name="text">The text.</param>
    /// <param name="at">The token after the size.</param>
    /// <param name="endsNamed">The text ends with a name, so that one between two sizes belongs to the first.</param>
    public static PartName? Behind(TokenText text, int at, bool endsNamed)
    {
        var isBracketed = text.IsAnySign(at, "([");
        var isApart = text.IsSign(at, ',') || Breaks.IsBefore(text, at);
        var start = isBracketed || text.IsSign(at, ',') ? at + 1 : at;

        if (text.IsSign(at, '|') || (isApart && !text.IsSign(at, ',')) || Parts(text, start, out var next) is not { Count: > 0 } parts)
        {
            return null;
        }

        // (plate mark), and not (sheet: 12 x 9 in.)
        if (isBracketed)
        {
            return text.IsAnySign(next, ")]") ? Named(text, parts, start, next, next + 1) : null;
        }

        var ends = next >= text.Count || text.IsAnySign(next, "|;,.)") || Breaks.IsBefore(text, next) || (endsNamed && !isApart && text.IsDigits(next));

        return ends ? Named(text, parts, start, next, next) : null;
    }

    /// <summary>300 x 225 mm image, 390 x 310 mm sheet.</summary>
    public static bool EndWith(TokenText text)
    {
        var end = text.IsAnySign(text.Count - 1, ".)]") ? text.Count - 1 : text.Count;

        return Enumerable.Range(1, 3).Any(words => SizePart.At(text, end - words, out var next) is not null && next == end);
    }

    /// <summary>The words before a colon: image, plate mark, sheet (each).</summary>
    private static PartName? Announced(TokenText text, int colon, int floor)
    {
        var first = colon;

        for (var steps = 0; steps < MostTokens && first > floor && !Breaks.IsBefore(text, first) && Reach(text, first - 1, floor) is { } reached; steps++)
        {
            first = reached;
        }

        while (first < colon && text.IsAnySign(first, ",.-&/)"))
        {
            first++;
        }

        if (first >= colon)
        {
            return null;
        }

        return Named(text, PartsIn(text, first, colon), first, colon, colon + 1) is var name && (name.Parts.Count > 0 || !IsAboutSizes(text, first, colon)) ? name : null;
    }

    /// <summary>Blatt 31 x 22 cm; sheet size 12 x 9 in.; the words stand at the beginning of what is said.</summary>
    private static PartName? Beside(TokenText text, int at, int floor)
    {
        var end = at;

        while (end > floor && (IsSizeWord(text.Word(end - 1)) || (text.IsSign(end - 1, '.') && !text.IsApart(end - 1))))
        {
            end--;
        }

        for (var start = end - 1; start >= Math.Max(floor, end - 3); start--)
        {
            if (SizePart.At(text, start, out var next) is { } part && next == end)
            {
                return Named(text, PartsBack(text, part, start, floor, out var first), first, end, at);
            }
        }

        return null;
    }

    private static List<SizePart> PartsBack(TokenText text, SizePart last, int start, int floor, out int first)
    {
        List<SizePart> parts = [last];
        first = start;

        while (first - 2 >= floor && IsJoining(text, first - 1) && SizePart.At(text, first - 2, out var next) is { } other && next == first - 1)
        {
            parts.Insert(0, other);
            first -= 2;
        }

        return parts;
    }

    private static List<SizePart> PartsIn(TokenText text, int start, int end)
    {
        for (var at = start; at < end; at++)
        {
            if (Parts(text, at, out _) is { Count: > 0 } parts)
            {
                return parts;
            }
        }

        return [];
    }

    /// <summary>image/sheet/mount, plate and sheet: joined names are all meant; "image trimmed to sheet" is the image.</summary>
    private static List<SizePart> Parts(TokenText text, int at, out int next)
    {
        List<SizePart> parts = [];
        next = at;

        while (SizePart.At(text, next, out var after) is { } part)
        {
            parts.Add(part);
            next = after;

            if (!IsJoining(text, next) || SizePart.At(text, next + 1, out _) is null)
            {
                break;
            }

            next++;
        }

        return parts;
    }

    private static bool IsJoining(TokenText text, int at) => text.IsAnySign(at, "/&+") || text.Word(at) is "and" or "und" or "et" or "e" or "y";

    /// <summary>The first token of what stands at the end of a name, or null where a name cannot go on.</summary>
    private static int? Reach(TokenText text, int at, int floor)
    {
        if (text.IsWord(at) || text.IsDigits(at) || text.IsAnySign(at, ",&/'-+"))
        {
            return at;
        }

        if (!text.IsSign(at, ')'))
        {
            return null;
        }

        for (var open = at - 1; open >= Math.Max(floor, at - MostInBrackets); open--)
        {
            if (text.IsSign(open, '('))
            {
                return open;
            }
        }

        return null;
    }

    private static bool IsAboutSizes(TokenText text, int start, int end)
    {
        for (var at = start; at < end; at++)
        {
            if (text.IsWord(at) && !IsSizeWord(text.Word(at)) && Hedges.At(text, at, out _) == Hedge.None && text.Word(at) is not ("each" or "je" or "chaque" or "h" or "w" or "l" or "b" or "d" or "x"))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsSizeWord(ReadOnlySpan<char> word) =>
        word is "size" or "sizes" or "measures" or "measuring" or "dimensions" or "dimension" or "dim" or "dims" or "is" or "of" or "grose" or "mase" or "format" or "misst" or "formato" or "misura" or "misure" or "medidas" or "mide" or "mesure";

    private static PartName Named(TokenText text, IReadOnlyList<SizePart> parts, int start, int end, int next) =>
        new(parts, text.Text[text[start].Start..text[end - 1].End].ToLowerInvariant(), start, next);
}
