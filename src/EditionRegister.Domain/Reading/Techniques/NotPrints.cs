using System.Collections.Frozen;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>
/// What has a word of printing in it and is no print: photographs called prints, tools and matrices, etched glass and engraved gems.
/// Common practice, no source.
/// </summary>
internal static class NotPrints
{
    private static readonly FrozenSet<string>.AlternateLookup<ReadOnlySpan<char>> Photographic = Words(
        "photograph photographs photographic photography photo photos photographie photographies fotografie fotografien fotografia fotografias foto fotos fotografico blueprint blueprints photocopy photocopies daguerreotype negative transparency");

    private static readonly FrozenSet<string>.AlternateLookup<ReadOnlySpan<char>> Things = Words(
        "glass crystal mirror gem gems gemstone cameo seal ring metal tin tinplate silver gold brass copper bronze steel iron pewter aluminum aluminium zinc ivory bone horn shell gourd tooth leather marble slate granite ceramic ceramics porcelain earthenware stoneware tile tiles bowl vase cup goblet beaker flask decanter box tray jewelry jewellery knife sword cotton linen wool textile textiles fabric fabrics cloth wallpaper wall sculpture carving plaque plate block stone");

    private static readonly FrozenSet<string>.AlternateLookup<ReadOnlySpan<char>> Engraved = Words("glass crystal gem gemstone ivory bone shell horn silver carnelian agate jasper onyx verre glas vetro vidrio cristal cristallo kristall");

    private static readonly FrozenSet<string>.AlternateLookup<ReadOnlySpan<char>> Tools = Words(
        "stone stones block blocks press presses needle needles tool tools crayon crayons pencil pencils chalk chalks tusche roller rollers matrix matrices knife sculpture sculptures carving");

    private static readonly FrozenSet<string>.AlternateLookup<ReadOnlySpan<char>> Turning = Words("on in with by from for of to at under over as auf in mit von aus sur avec par sous su con da sobre en");

    private static readonly string[] OfLight =
    [
        "gelatin silver", "gelatine silver", "silver gelatin", "silver gelatine", "silver", "albumen", "albumen silver", "salt", "salted paper", "platinum", "palladium", "platinum palladium",
        "carbon", "gum bichromate", "gum", "bromoil", "chromogenic", "chromogenic color", "chromogenic colour", "dye transfer", "dye coupler", "dye destruction", "silver dye bleach",
        "c", "c type", "type c", "photographic", "photo", "contact", "cyanotype", "diazo", "photostat", "photostatic", "blueline", "blue line", "blackline", "black line", "sepia line", "photogenic",
    ];

    public static IEnumerable<string> Writings { get; } =
    [
        .. OfLight.Select(process => process + " print"),
        "print reproduction", "photographic reproduction", "photo reproduction", "finger print", "thumb print", "foot print", "carved woodblock", "printing block", "printing plate", "printing press", "lithographic ink", "litho ink",
    ];

    public static bool IsPhotographic(ReadOnlySpan<char> word) => Photographic.Contains(word);

    /// <summary>An etched glass, a lithographed tin, a lithographic crayon, an engraving on glass: the words at hand say a thing, not a print.</summary>
    public static bool SaysAThing(TokenText text, Met met) =>
        IsTool(text, met)
        || (met.Writing.IsParticiple && ThingFollows(text, met.Next))
        || (IsCutOrBitten(met.Writing) && (Engraved.Contains(text.Word(met.Start - 1)) || IsOnOne(text, met.Next)));

    private static bool IsCutOrBitten(Writing writing) =>
        writing.Technique?.Word is "etching" or "engraving" or "intaglio-print" or "relief-print" or "stipple-engraving";

    // "Etching plate" is one, "etching plate tone" and "lithographic plates" are prints.
    private static bool IsTool(TokenText text, Met met) =>
        Tools.Contains(text.Word(met.Next)) || (text.IsWord(met.Next, "plate") && !text.IsWord(met.Next + 1, "tone"));

    private static bool ThingFollows(TokenText text, int at)
    {
        for (var i = at; i < at + 4 && text.IsWord(i) && !Turning.Contains(text.Word(i)); i++)
        {
            if (Things.Contains(text.Word(i)))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsOnOne(TokenText text, int at) =>
        text.Word(at) is "on" or "in" or "auf" or "sur" or "su" or "sobre" or "en" && (IsLastWord(text, at + 1) || IsLastWord(text, at + 2));

    // "On glass", and not "on ivory wove paper".
    private static bool IsLastWord(TokenText text, int at) => Engraved.Contains(text.Word(at)) && !text.IsWord(at + 1);

    private static FrozenSet<string>.AlternateLookup<ReadOnlySpan<char>> Words(string words) =>
        words.Split(' ').ToFrozenSet(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();
}
