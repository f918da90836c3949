using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>What looks like a number of an edition and is none: dates, measures, scales, pages, files.</summary>
internal static class NoEditionNumbers
{
    /// <summary>Whether a word is a month, or begins one and is abbreviated.</summary>
    public static bool IsMonth(ReadOnlySpan<char> word) => word is
        "january" or "february" or "march" or "april" or "may" or "june" or "july" or "august" or "september" or "october" or "november" or "december"
        or "jan" or "feb" or "mar" or "apr" or "jun" or "jul" or "aug" or "sep" or "sept" or "oct" or "nov" or "dec"
        or "janvier" or "fevrier" or "mars" or "avril" or "mai" or "juin" or "juillet" or "aout" or "septembre" or "octobre" or "novembre" or "decembre"
        or "januar" or "februar" or "marz" or "juni" or "juli" or "oktober" or "dezember" or "maart" or "mei"
        or "gennaio" or "febbraio" or "marzo" or "aprile" or "maggio" or "giugno" or "luglio" or "agosto" or "settembre" or "ottobre" or "dicembre"
        or "enero" or "febrero" or "abril" or "mayo" or "junio" or "julio" or "septiembre" or "octubre" or "noviembre" or "diciembre";

    /// <summary>A year of the trade; no edition has so many.</summary>
    public static bool IsYear(int value) => value is >= 1400 and < 2100;

    /// <summary>The denominators people measure with.</summary>
    public static bool IsRulersPart(int of) => of is 2 or 3 or 4 or 8 or 16 or 32 or 64;

    /// <summary>Whether the word before says that a page, a file or a scale follows.</summary>
    public static bool IsAnnounced(TokenText text, int at)
    {
        var before = text.IsAnySign(at - 1, ".:#)]") ? at - 2 : at - 1;

        return text.Word(before) is "scale" or "scales" or "page" or "pages" or "p" or "fol" or "folio" or "fig" or "file" or "acc" or "accession" or "inv" or "cat" or "lot"
            or "box" or "neg" or "negative" or "vol" or "cm" or "cms" or "mm" or "in" or "inch" or "inches" or "ft" or "feet" or "circle" or "circled" or "elevation" or "job" or "dwg";
    }

    /// <summary>Whether what stands behind makes it a measure.</summary>
    public static bool IsMeasure(TokenText text, int at, bool quoted)
    {
        if (text.IsSign(at, '=') || (text.IsSign(at, '"') && !quoted && !text.IsApart(at)) || (text.IsSign(at, '\'') && !text.IsApart(at) && !text.IsDigits(at + 1)))
        {
            return true;
        }

        return text.Word(at) is "inch" or "inches" or "cm" or "cms" or "mm" or "ft" or "feet" or "full" or "size" or "scale" or "actual" or "execution" or "real" or "natural"
            || (text.Word(at) is "in" && text.IsSign(at + 1, '.')) || text.IsSign(at, '×') || (text.Word(at) is "x" && text.IsDigits(at + 1));
    }
}
