using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Copies;

/// <summary>What figures are measured in, so far as it tells a measure from a copy's number.</summary>
internal static class Units
{
    /// <summary>Whether a unit of length stands there.</summary>
    public static bool IsLength(TokenText text, int at) =>
        text.Word(at) is "cm" or "cms" or "mm" or "inch" or "inches" or "ft" or "feet" || (text.IsWord(at, "in") && text.IsSign(at + 1, '.') && !text.IsApart(at + 1));

    /// <summary>Whether what stands there makes a measure, a scale or a part of something of the figures before it.</summary>
    public static bool IsBehind(TokenText text, int at) =>
        IsLength(text, at)
        || text.IsAnySign(at, "=×%°¢")
        || text.Word(at) is "full" or "size" or "scale" or "actual" or "execution" or "real" or "natural" or "pint" or "pints" or "quart" or "quarts" or "gallon" or "oz" or "ounces" or "lb" or "lbs" or "lumens" or "watts" or "volts" or "length" or "height" or "width"
        || (text.IsWord(at, "f") && text.IsSign(at + 1, '.') && text.IsWord(at + 2, "s"))
        || (text.IsWord(at, "x") && text.IsDigits(at + 1));

    /// <summary>Mats and folders have sizes of their own: FOLDER-MAT 16/20.</summary>
    public static bool IsMount(TokenText text, int at) => text.Word(at) is "mat" or "mats" or "folder" or "foldermat" or "matted" or "passepartout";

    /// <summary>A part of an inch as rulers have it: halves to sixty-fourths; never one that could be said shorter.</summary>
    public static bool IsRulersPart(int? number, int? of) => number < of && of is 2 or 4 or 8 or 16 or 32 or 64 && number % 2 == 1;
}
