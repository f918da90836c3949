using System.Collections.Frozen;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>"After an engraving by", "d'après une gravure", "nach einem Holzschnitt", "without aquatint": the work after another is not of its technique.</summary>
internal static class Negations
{
    private const int Farthest = 8;

    private static readonly FrozenSet<string>.AlternateLookup<ReadOnlySpan<char>> Articles = (
        "a an the his her its their own this that another one un une le la les l d sa son ses leur leurs de einem einer eines dem der den eigenem eigener eigenen seinem seiner ihrem ihrer una uno il lo gli el los las su sus").Split(' ')
        .ToFrozenSet(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>The token after the techniques that are named only to say that this is another thing; null where none are.</summary>
    public static int? At(TokenText text, int at, Func<int, Met?> technique)
    {
        if (LengthAt(text, at) is not (> 0 and var length))
        {
            return null;
        }

        var first = First(text, at + length, technique);

        return first is { } met ? EndOfAll(text, met.Next, technique) : null;
    }

    private static int LengthAt(TokenText text, int at) => text.Word(at) switch
    {
        "after" or "apres" or "nach" or "segun" or "without" or "sans" or "ohne" or "senza" or "sin" or "not" or "nicht" or "kein" or "keine" or "non" or "pas" => 1,
        "reproduction" or "copy" or "facsimile" or "photograph" or "photocopy" or "reproduktion" or "kopie" or "reproduccion" or "riproduzione" or "copie" or "copia"
            => text.Word(at + 1) is "of" or "after" or "d" or "de" or "einer" or "eines" or "von" or "di" ? 2 : 0,
        "based" => text.IsWord(at + 1, "on") ? 2 : 0,
        "da" => text.Word(at + 1) is "un" or "una" or "uno" ? 1 : 0,
        _ => 0,
    };

    // An article or "Mueller's" leads to it over some words; without one it follows at once.
    private static Met? First(TokenText text, int at, Func<int, Met?> technique)
    {
        var isLed = false;

        for (var i = at; i < at + Farthest; i++)
        {
            if (technique(i) is { } met)
            {
                return isLed || i == at ? met : null;
            }

            isLed |= Articles.Contains(text.Word(i)) || text.IsSign(i, '\'');

            if (!(text.IsAnySign(i, "'-.") || (text.IsWord(i) && text.Word(i) is not ("by" or "with" or "in" or "on" or "von" or "mit" or "auf" or "sur" or "avec" or "par" or "as" or "con" or "sobre"))))
            {
                return null;
            }
        }

        return null;
    }

    private static int EndOfAll(TokenText text, int next, Func<int, Met?> technique)
    {
        while (text.Word(next) is "and" or "or" or "und" or "oder" or "et" or "ou" or "e" or "o" or "y")
        {
            var at = Articles.Contains(text.Word(next + 1)) ? next + 2 : next + 1;

            if (technique(at) is not { } met)
            {
                return next;
            }

            next = met.Next;
        }

        return next;
    }
}
