using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>Names of parts among the words beside a size.</summary>
internal static class PartWords
{
    /// <summary>The parts that end with this one, joined before it: image and sheet.</summary>
    public static List<SizePart> Back(TokenText text, SizePart last, int start, int floor, out int first)
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

    /// <summary>The first parts that are named among tokens.</summary>
    public static List<SizePart> In(TokenText text, int start, int end)
    {
        for (var at = start; at < end; at++)
        {
            if (At(text, at, out _) is { Count: > 0 } parts)
            {
                return parts;
            }
        }

        return [];
    }

    /// <summary>image/sheet/mount, plate and sheet: joined names are all meant; "image trimmed to sheet" is the image.</summary>
    public static List<SizePart> At(TokenText text, int at, out int next)
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

    /// <summary>Size, dimensions, each, about: words that name nothing.</summary>
    public static bool AreAboutSizes(TokenText text, int start, int end)
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

    public static bool IsSizeWord(ReadOnlySpan<char> word) =>
        word is "size" or "sizes" or "measures" or "measuring" or "dimensions" or "dimension" or "dim" or "dims" or "is" or "of" or "grose" or "mase" or "format" or "misst" or "formato" or "misura" or "misure" or "medidas" or "mide" or "mesure";
}
