using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>Where one thing said ends and the next begins, for the eye: a new line, or a gap of two blanks.</summary>
internal static class Breaks
{
    public static bool IsBefore(TokenText text, int at)
    {
        if (at <= 0 || at >= text.Count || !text.IsApart(at))
        {
            return false;
        }

        var gap = text.Text.AsSpan(text[at - 1].End, text[at].Start - text[at - 1].End);

        return gap.Length > 1 || gap[0] is '\n' or '\r' or '\t';
    }
}
