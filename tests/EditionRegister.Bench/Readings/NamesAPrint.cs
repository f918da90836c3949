using System.Text.RegularExpressions;

namespace EditionRegister.Bench.Readings;

/// <summary>
/// Whether a text names a print, by the stems of words alone and without the reader: any stem of printmaking, or the word "print" where
/// no photograph, blueprint or copy is named. So a mistyped "engravig" names a print that the reader misses.
/// </summary>
internal static partial class NamesAPrint
{
    public static bool In(string text) => Stem().IsMatch(text) || (Print().IsMatch(text) && !Photographic().IsMatch(text));

    [GeneratedRegex(@"\b(photo|zinc)?etch|engrav|aquat|mezzotint|dry.?point|litho|woodcut|wood.cut|wood.?block|block.print|linocut|lino.cut|linoleum|screen|serigraph|stencil|pochoir|monotype|mono.?print|collotype|gravure|intaglio|relief|half.?tone|emboss|deboss|off.?set|letterpress|stipple|crayon manner|burin|ink.?jet|gicl|digital.print|digitally.print|clich|collagraph|planograph|chine|rubber.stamp|roulette|carborundum|hand.?colou?r|soft.?ground|sugar|spit.?bite|line.?cut", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Stem();

    [GeneratedRegex(@"\bprints?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Print();

    [GeneratedRegex(@"photo(graph|cop|stat| |$)|gelatin|chromogenic|cibachrome|platinum|blueprint|blue.?line|black.?line|diazo|\bc-print|reproduction", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Photographic();
}
