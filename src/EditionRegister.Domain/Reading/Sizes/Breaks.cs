using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>Where one thing said ends and the next begins, for the eye: a new line, or a gap of two blanks.</summary>
internal static class Breaks
{
    public static bool IsBefore(TokenText text, int at) => Gap(text, at) is { Length: > 1 } or ['\n' or '\r' or '\t', ..];

    public static bool IsNewLine(TokenText text, int at) => Gap(text, at).IndexOfAny('\n', '\r') >= 0;

    private static ReadOnlySpan<char> Gap(TokenText text, int at) =>
        at <= 0 || at >= text.Count || !text.IsApart(at) ? [] : text.Text.AsSpan(text[at - 1].End, text[at].Start - text[at - 1].End);
}
