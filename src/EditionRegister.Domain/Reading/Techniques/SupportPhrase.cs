using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>The words for what a work is printed on, from the token after "on" to where another matter begins.</summary>
/// <param name="Start">Its first token.</param>
/// <param name="End">The token to go on from.</param>
/// <param name="Trimmed">The token after its last word.</param>
/// <param name="ChineColle">Chine collé is a technique wherever it stands.</param>
internal sealed record SupportPhrase(int Start, int End, int Trimmed, Met? ChineColle)
{
    public static SupportPhrase From(TechniqueText text, int start)
    {
        var end = start;
        Met? chineColle = null;

        while (end < text.Tokens.Count && !EndsAt(text, start, end))
        {
            if (text.At(end) is { Writing.Technique.Word: "chine-colle" } met)
            {
                chineColle ??= met;
                end = met.Next;
            }
            else
            {
                end++;
            }
        }

        return new SupportPhrase(start, end, Trim(text.Tokens, start, end), chineColle);
    }

    private static int Trim(TokenText tokens, int start, int end)
    {
        while (end > start && (tokens.IsAnySign(end - 1, ".,:-)") || LeftPhrases.IsJoining(tokens.Word(end - 1))))
        {
            end--;
        }

        return end;
    }

    private static bool EndsAt(TechniqueText text, int start, int at)
    {
        var tokens = text.Tokens;

        return tokens.IsAnySign(at, ";|([")
            || (tokens.IsSign(at, ',') && !SupportWords.GoesOnOver(tokens, start, at))
            || SupportWords.EndsSentence(tokens, at)
            || (Joins(tokens, at) && OpensAnother(text, at + 1))
            || (at > start && IsAnotherMatter(text, at));
    }

    private static bool IsAnotherMatter(TechniqueText text, int at)
    {
        var tokens = text.Tokens;

        return (SupportWords.IsAnotherMatter(tokens.Word(at)) && !SupportWords.IsMounting(tokens.Word(at - 1)))
            || (SupportWords.IsPreposition(tokens.Word(at)) && text.IsPrintItself(at + 1))
            || ColourWords.Counted(tokens, at) is not null;
    }

    private static bool Joins(TokenText tokens, int at) =>
        tokens.Word(at) is "and" or "und" or "et" or "e" or "y" or "a" or "en" or "from" or "de" || tokens.IsSign(at, '&');

    private static bool OpensAnother(TechniqueText text, int at) =>
        text.IsPrintItself(at)
        || ColourWords.Counted(text.Tokens, at) is not null
        || ColourWords.IsPlural(text.Tokens.Word(at))
        || MatrixWords.At(text.Tokens, at) is not null
        || (text.Tokens.IsDigits(at) && text.IsTechnique(at + 1));
}
