using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Whether a year is before or of our era, and the years of other eras, which are not read.</summary>
internal static class Eras
{
    private static readonly HashSet<string> Bc = DateWords.Of("bc bce");
    private static readonly HashSet<string> Ad = DateWords.Of("ad ce");
    private static readonly HashSet<string> Others = DateWords.Of("ah hegira hijri hijra samvat saka");
    private static readonly HashSet<string> Reigns = DateWords.Of("meiji taisho showa heisei reiwa minguo");

    private static readonly string[] AnnoDomini = ["a", "d"];
    private static readonly string[] AnnoHegirae = ["a", "h"];

    // With dots: B.C., B.C.E., A.D., C.E., v. Chr., n. Chr., av. J.-C., apr. J.-C., a.C., d.C.
    private static readonly (string[] Parts, bool IsBefore)[] Dotted =
    [
        (["b", "c", "e"], true), (["b", "c"], true), (["a", "d"], false), (["c", "e"], false), (["v", "chr"], true), (["n", "chr"], false),
        (["av", "j", "c"], true), (["apr", "j", "c"], false), (["ap", "j", "c"], false), (["a", "c"], true), (["d", "c"], false),
    ];

    public static (bool IsBefore, int Next)? Behind(TokenText text, int at)
    {
        if (text.Is(at, Bc) || text.Is(at, Ad))
        {
            return (text.Is(at, Bc), at + 1);
        }

        foreach (var (parts, isBefore) in text.IsWord(at) ? Dotted : [])
        {
            if (AfterDotted(text, at, parts) is { } next)
            {
                return (isBefore, next);
            }
        }

        return null;
    }

    /// <summary>AD 70, A.D. 70: the token of the year.</summary>
    public static int? Before(TokenText text, int at) =>
        text.IsWord(at, "ad") && text.IsDigits(at + 1) ? at + 1 : AfterDotted(text, at, AnnoDomini) is { } next && text.IsDigits(next) ? next : null;

    /// <summary>A.H. 1065, Showa 12, 1065 AH: the token after a year that is not ours; null where none stands.</summary>
    public static int? AfterOther(TokenText text, int at)
    {
        var word = AfterOtherWord(text, at);

        if (word is { } year && text.IsDigits(year))
        {
            return year + 1;
        }

        return text.Is(at, Reigns) && text.Figure(at + 1) is < 100 ? at + 2 : text.IsDigits(at) ? AfterOtherWord(text, at + 1) : null;
    }

    private static int? AfterOtherWord(TokenText text, int at) => text.Is(at, Others) ? at + 1 : AfterDotted(text, at, AnnoHegirae);

    private static int? AfterDotted(TokenText text, int at, string[] parts)
    {
        for (var part = 0; part < parts.Length; part++)
        {
            if (!text.IsWord(at, parts[part]))
            {
                return null;
            }

            at++;
            var last = part == parts.Length - 1;

            if (!text.IsSign(at, '.'))
            {
                return last ? at : null;
            }

            at = !last && text.IsSign(at + 1, '-') ? at + 2 : at + 1;
        }

        return at;
    }
}
