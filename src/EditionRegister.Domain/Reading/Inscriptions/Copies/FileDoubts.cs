using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Copies;

/// <summary>Figures that may be a file's, a maker's or an object's: 2/4364, 925/1000, N 79/506, -3/12, 11/12[circled].</summary>
internal static class FileDoubts
{
    private const int LargeEdition = 2_000;

    public static bool IsOne(TokenText text, Fraction fraction, Before before)
    {
        var (one, two, at) = (fraction.Number.Value, fraction.Size.Of ?? 0, fraction.Start);

        if (two >= LargeEdition && one <= two / 100 && (before == Before.Anything || text.IsSign(at - 1, '#')))
        {
            return true;
        }

        // Thousandths of silver or gold.
        var isFineness = two == 1_000 && one is 999 or 958 or 950 or 935 or 925 or 900 or 835 or 830 or 800 or 750 or 585;
        var isTight = !text.IsApart(at) && (text.IsAnySign(at - 1, "-]") || (text.IsWord(at - 1) && text[at - 1].Length <= 2));
        var isLettered = text.Written(at - 1) is [>= 'J' and <= 'Z' and not ('V' or 'X' or 'L')] && !text.IsSign(at - 2, '\'');

        return before == Before.Anything && (isFineness || isTight || isLettered || text.Written(fraction.Next - 1) is ['0', ..] || Announcements.IsCircled(text, fraction.Next));
    }
}
