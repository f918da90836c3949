using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

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

        if (text.IsSign(at, '|') || (isApart && !text.IsSign(at, ',')) || PartWords.At(text, start, out var next) is not { Count: > 0 } parts)
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

        return Named(text, PartWords.In(text, first, colon), first, colon, colon + 1) is var name && (name.Parts.Count > 0 || !PartWords.AreAboutSizes(text, first, colon)) ? name : null;
    }

    /// <summary>Blatt 31 x 22 cm; sheet size 12 x 9 in.; the words stand at the beginning of what is said.</summary>
    private static PartName? Beside(TokenText text, int at, int floor)
    {
        var end = at;

        while (end > floor && (PartWords.IsSizeWord(text.Word(end - 1)) || (text.IsSign(end - 1, '.') && !text.IsApart(end - 1))))
        {
            end--;
        }

        for (var start = end - 1; start >= Math.Max(floor, end - 3); start--)
        {
            if (SizePart.At(text, start, out var next) is { } part && next == end)
            {
                return Named(text, PartWords.Back(text, part, start, floor, out var first), first, end, at);
            }
        }

        return null;
    }

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

    private static PartName Named(TokenText text, IReadOnlyList<SizePart> parts, int start, int end, int next) =>
        new(parts, text.Text[text[start].Start..text[end - 1].End].ToLowerInvariant(), start, next);
}
