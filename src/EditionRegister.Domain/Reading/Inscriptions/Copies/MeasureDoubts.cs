using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Copies;

/// <summary>Figures that may be a part of an inch, of a drawing or of a whole: 1/4 flat, the lower 1/3, 1/24 in a bracket.</summary>
internal static class MeasureDoubts
{
    public static bool IsOne(TokenText text, Fraction fraction, Surroundings around)
    {
        var (at, next) = (fraction.Start, fraction.Next);

        if (at > around.FirstMeasure || around.IsOfADrawing)
        {
            return true;
        }

        var isPart = text.Written(next) is [>= 'a' and <= 'z', ..] || text.IsAnySign(next, "&\"") || (text.IsSign(next, '+') && !text.IsDigits(next + 1)) || (text.IsWord(next) && text.IsSign(next + 1, '/') && text[next].Length == 1);

        // Two thirds of something are said in a sentence; a ruler's part is doubtful anywhere but at the beginning, in brackets of its own, or as eighths and sixteenths behind a title.
        return fraction.Size.Of == 3 ? isPart || text.Written(at - 1) is [>= 'a' and <= 'z', ..]
            : fraction.IsRulersPart && (isPart || !(at == 0 || text.IsSign(at - 1, '(') || (fraction.Size.Of is 8 or 16 && text.Written(at - 1) is [>= 'A' and <= 'Z', >= 'a' and <= 'z', ..])));
    }
}
