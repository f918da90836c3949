using System.Globalization;
using System.Text.Json;
using EditionRegister.Domain.Reading.Search;

namespace EditionRegister.Cli;

/// <summary>What was understood of a search, for machines: every part that was read otherwise than as words.</summary>
internal static class SoughtJson
{
    public static void Write(Utf8JsonWriter json, Sought sought) => json.Each("understood", sought.Understood, part =>
    {
        json.WriteString("text", part.Written);
        json.WriteString("as", part.Meaning);

        if (part.Number is { } number)
        {
            json.WriteString("kind", number.Series);
            json.WriteString("notation", number.Notation?.Word);
            json.Whole("number", number.Number);
            json.Whole("of", number.Of);
        }

        if (part.Dates is { } dates)
        {
            json.WriteString("earliest", Iso(dates.Earliest));
            json.WriteString("latest", Iso(dates.Latest));
        }

        if (part.Techniques.Count > 0)
        {
            json.Texts("techniques", part.Techniques.Select(technique => technique.Word));
        }
    });

    private static string? Iso(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
