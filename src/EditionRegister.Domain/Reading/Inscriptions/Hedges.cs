using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>Words before or behind a size that say how sure it is: at least, about, c., (?).</summary>
internal static class Hedges
{
    /// <summary>The hedge that begins at a token, and the token after it.</summary>
    public static (SizeHedge Hedge, int Next) Before(TokenText text, int at)
    {
        at = text.IsWord(at, "a") || text.IsWord(at, "an") ? at + 1 : at;
        var word = text.Word(at);

        if (word is "at" && text.Word(at + 1) is "least" or "most" or "minimum")
        {
            return (text.IsWord(at + 1, "most") ? SizeHedge.AtMost : SizeHedge.AtLeast, at + 2);
        }

        if ((word is "less" or "fewer" && text.IsWord(at + 1, "than")) || (word is "up" && text.IsWord(at + 1, "to")))
        {
            return (SizeHedge.AtMost, at + 2);
        }

        if (word is "more" && text.IsWord(at + 1, "than"))
        {
            return (SizeHedge.AtLeast, at + 2);
        }

        // A C that no figure follows is a hundred, or a copy's letter.
        if (word is "c" or "ca" && !text.IsDigits(text.IsSign(at + 1, '.') ? at + 2 : at + 1))
        {
            return (SizeHedge.None, at);
        }

        return word is "about" or "approximately" or "approx" or "c" or "ca" or "circa" or "possibly" or "probably" or "perhaps" or "estimated" or "around" or "environ" or "ungefahr" or "planned" or "projected"
            ? (SizeHedge.About, text.IsSign(at + 1, '.') ? at + 2 : at + 1)
            : word is "over" or "minimum" ? (SizeHedge.AtLeast, at + 1)
            : word is "maximum" ? (SizeHedge.AtMost, at + 1)
            : (SizeHedge.None, at);
    }

    /// <summary>A question mark right behind a figure, in brackets or not.</summary>
    public static (bool IsDoubted, int Next) Behind(TokenText text, int at) =>
        text.IsSign(at, '?') ? (true, at + 1)
        : text.IsAnySign(at, "([") && text.IsSign(at + 1, '?') && text.IsAnySign(at + 2, ")]") ? (true, at + 3)
        : (false, at);
}
