using System.Globalization;
using EditionRegister.Domain.Reading.Text;
using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>Sizes of ISO 216, A0 to A10 and B0 to B10, upright: each is the one before with its long side halved and rounded down to a millimetre.</summary>
public static class IsoSheet
{
    private const int Smallest = 10;

    /// <summary>A4, B2; null for any other name.</summary>
    public static Size? Of(string? name) =>
        name is ['A' or 'B', .. var number] && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var step) && step <= Smallest && number == step.ToString(CultureInfo.InvariantCulture) ? Sheet(name[0], step) : null;

    /// <summary>A name that begins at a token, with DIN or ISO before it where that is written.</summary>
    internal static string? At(TokenText text, int at, out int next)
    {
        var start = text.Word(at) is "din" or "iso" ? at + 1 : at;
        next = start + 2;

        // Not the beginning of A4b, A4.5 or A4-17.
        return text.Written(start) is "A" or "B" && text.IsDigits(start + 1) && !text.IsApart(start + 1) && (next >= text.Count || text.IsApart(next) || PaperRest.Separates(text, next) || text.IsSign(next, '.'))
            && !PaperRest.IsInAFigure(text, next) && (start == 0 || text.IsApart(start) || PaperRest.Separates(text, start - 1))
            && text.Text[text[start].Start..text[start + 1].End] is var name && Of(name) is not null ? name : null;
    }

    private static Size Sheet(char series, int step)
    {
        var (high, wide) = series == 'A' ? (1_189, 841) : (1_414, 1_000);

        for (var i = 0; i < step; i++)
        {
            (high, wide) = (wide, high / 2);
        }

        return new Size(new Length(high * 1_000L), new Length(wide * 1_000L));
    }
}
