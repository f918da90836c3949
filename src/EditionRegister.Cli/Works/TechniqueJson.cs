using System.Text.Json;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>How a work is printed, for machines: as written, and what was read in it.</summary>
internal static class TechniqueJson
{
    public static void Write(Utf8JsonWriter json, Work work)
    {
        json.WriteString("technique", work.Technique);
        json.Each("techniques", work.Techniques, one =>
        {
            var known = work.OwnWords.TechniqueOf(one.Technique);
            json.WriteString("technique", one.Technique);
            json.WriteString("name", known?.Name);
            json.WriteString("aat", known is { Aat.Length: > 0 } ? known.Aat : null);
        });
        json.Whole("technique_colours", work.TechniqueColours);
        json.WriteString("technique_support", work.TechniqueSupport);
    }
}
