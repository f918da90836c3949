using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>
/// Reads sizes as catalogues write them: "15 3/4 x 11 7/8 in. (40 x 30.2 cm)", "image: 300 × 225 mm; sheet: …", parts run together.
/// Height comes before width. Where two systems stand side by side the metric one is kept, and it is said whether the other agrees.
/// </summary>
public static class SizeReader
{
    // A figure may be rounded to the nearest step of its system; both roundings may add up, and inches are rounded to a sixteenth at best.
    private const long Sixteenth = 25_400 / 16;

    /// <summary>Every part that was measured, in the order of the text; what is no size is left.</summary>
    public static IReadOnlyList<Measured> Read(string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return [];
        }

        TokenText tokens = new(text);
        List<Measured> parts = [];

        for (var at = 0; at < tokens.Count;)
        {
            if (Group.At(tokens, at) is { } first)
            {
                at = Take(tokens, at, first, parts);
            }
            else
            {
                at++;
            }
        }

        return parts;
    }

    private static int Take(TokenText text, int at, Group first, List<Measured> parts)
    {
        var next = text.IsSign(first.Next, '.') ? first.Next + 1 : first.Next;
        var bracket = text.IsAnySign(next, "([;,=/");
        var second = Group.At(text, bracket ? next + 1 : next);
        var pairs = second is { } other && other.IsMetric != first.IsMetric && other.Count == first.Count;
        var end = pairs ? second!.Value.Next : first.Next;
        var (kept, check) = pairs && !first.IsMetric ? (second!.Value, (Group?)first) : (first, pairs ? second : null);

        parts.Add(new Measured(PartBefore(text, at), kept[0], kept.Count > 1 ? kept[1] : null, kept.Count > 2 ? kept[2] : null, Agrees(kept, check), text[at].Start..text[end - 1].End));

        return end;
    }

    private static Agreement Agrees(Group kept, Group? check)
    {
        if (check is not { } other)
        {
            return Agreement.OneSystem;
        }

        for (var i = 0; i < kept.Count; i++)
        {
            if (Math.Abs(kept[i] - other[i]) > Math.Max(kept.Step(i), kept.IsMetric ? 0 : Sixteenth) + Math.Max(Math.Min(other.Step(i), Sixteenth * 4), Sixteenth))
            {
                return Agreement.Differ;
            }
        }

        return Agreement.Agree;
    }

    /// <summary>The words before a colon: image, plate mark, sheet (each).</summary>
    private static string? PartBefore(TokenText text, int at)
    {
        if (!text.IsSign(at - 1, ':'))
        {
            return null;
        }

        var (first, last) = (at - 2, at - 2);

        while (first > 0 && (text.IsWord(first - 1) || text.IsAnySign(first - 1, "&/()")) && !text.IsSign(first - 1, '|') && !(text.IsSign(first - 1, ')') && !text.IsApart(first)))
        {
            first--;
        }

        return last < 0 || !(text.IsWord(last) || text.IsSign(last, ')')) ? null : text.Text[text[first].Start..text[last].End].ToLowerInvariant();
    }
}
