using EditionRegister.Domain.Reading.Inscriptions.Copies;
using EditionRegister.Domain.Reading.Inscriptions.Editions;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Proofs;

/// <summary>What stands behind a mark that has no fraction: a number of its own, a letter, or the size behind a slash. A.P. 5, H.C. C, AP/160.</summary>
internal static class MarkNumbers
{
    private const int MostSigns = 3;

    // "PP 81" is a printer's proof of 1981; nobody pulls so many that they need such a number.
    private const int LargestBare = 31;

    /// <summary>Over signs, "no." and "Series III".</summary>
    public static int Over(TokenText text, int at)
    {
        for (var skipped = 0; skipped < MostSigns; skipped++)
        {
            if (text.IsAnySign(at, "#.:(-"))
            {
                at++;
            }
            else if (EditionWords.IsNumberWord(text.Word(at)))
            {
                at = text.IsSign(at + 1, '.') ? at + 2 : at + 1;
            }
            else if (text.Word(at) is "series" or "set" && Numerals.Either(text, at + 1) is { IsUnknown: false } series)
            {
                at = series.Next;
            }
        }

        return at;
    }

    public static SizeMet? Behind(TokenText text, SeriesMet mark, int next)
    {
        if (text.IsSign(mark.Next, '/'))
        {
            return SizeFigures.At(text, mark.Next + 1, words: false) is { IsUnknown: false } of && !text.IsSign(of.Next, '/') && !(text.IsWord(of.Next) && !text.IsApart(of.Next)) && !IsYear(of.Of) && of is not { IsRoman: true, Hedge: SizeHedge.None }
                ? SizeMet.Sized(mark.Start, of)
                : null;
        }

        return text.IsDigits(next) ? Figure(text, mark, next) : Written(text, mark, next);
    }

    /// <summary>e/e: a lettered copy.</summary>
    public static bool IsLetters(TokenText text, int at) => text.IsWord(at) && text[at].Length == 1 && text.IsSign(at + 1, '/') && text.IsWord(at + 2) && text[at + 2].Length == 1;

    private static SizeMet? Figure(TokenText text, SeriesMet mark, int at)
    {
        if (Numerals.Arabic(text, at) is not { } number || text.IsAnySign(number.Next, "/'%") || DateParts.IsMonth(text.Word(number.Next)) || Units.IsBehind(text, number.Next))
        {
            return null;
        }

        var isBare = at == mark.Next && text.IsApart(at);
        var isSaid = text.IsSign(at - 1, '#') || EditionWords.IsNumberWord(text.Word(Announcements.WordBefore(text, at)));
        var ordinal = Ordinals.WithEnding(text, at) is { } ended && !text.IsSign(at + 1, '.') ? ended : number;

        // Trial proof 2nd state: the state's number.
        return (isBare && number.Value is > LargestBare and < 100) || (!isSaid && IsYear(number.Value)) || (ordinal.Next > number.Next && States.IsWord(text.Word(ordinal.Next))) ? null : new SizeMet(mark.Start, ordinal.Next) { Number = number.Value };
    }

    private static SizeMet? Written(TokenText text, SeriesMet mark, int at)
    {
        if (text.Written(at) is not [>= 'A' and <= 'Z', ..] || text.IsAnySign(at + 1, ".'") || text.IsSign(at - 1, '(') || States.IsWord(text.Word(at + 1)))
        {
            return null;
        }

        return Numerals.Roman(text, at) is { } roman && roman.Value <= 100 && text.Written(at) is ['I' or 'V' or 'X', ..] ? new SizeMet(mark.Start, roman.Next) { Number = roman.Value, IsRoman = true }
            : text[at].Length == 1 && !text.IsWord(at + 1) && !(text.IsSign(at + 1, '/') && text.IsDigits(at + 2)) ? new SizeMet(mark.Start, at + 1) { Letter = text.Written(at).ToString() }
            : null;
    }

    private static bool IsYear(int? value) => value is { } year && DateParts.IsYear(year);
}
