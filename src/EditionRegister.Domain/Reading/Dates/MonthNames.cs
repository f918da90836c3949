using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Months and seasons by name in five languages, and long names with one slip of the pen.</summary>
internal static class MonthNames
{
    private static readonly string[] Months =
    [
        "january jan janvier janv januar janner gennaio gen enero ene", "february feb fevrier fevr februar febbraio febrero", "march mar mars marz maerz marzo",
        "april apr avril avr aprile abril abr", "may mai maggio mag mayo", "june jun juin juni giugno giu junio", "july jul juillet juil juli luglio lug julio",
        "august aug aout agosto ago", "september sep sept septembre settembre sett septiembre", "october oct octobre oktober okt ottobre ott octubre",
        "november nov novembre noviembre", "december dec decembre dezember dez dicembre dic diciembre",
    ];

    private static readonly string[] Seasons =
    [
        "spring printemps fruhling fruhjahr primavera", "summer ete sommer estate verano", "autumn fall automne herbst autunno otono", "winter hiver inverno invierno",
    ];

    private static readonly Dictionary<string, int> ByMonth = ByWord(Months, 1);
    private static readonly Dictionary<string, int> BySeason = ByWord(Seasons, 21);
    private static readonly string[] Long = [.. ByMonth.Keys.Where(name => name.Length >= OneSlip.Shortest)];

    /// <summary>1 to 12, or null.</summary>
    public static int? Month(TokenText text, int at)
    {
        var word = text.Word(at);

        if (ByMonth.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(word, out var month))
        {
            return month;
        }

        if (word.Length < OneSlip.Shortest - 1)
        {
            return null;
        }

        foreach (var name in Long)
        {
            if (OneSlip.IsOf(word, name))
            {
                return ByMonth[name];
            }
        }

        return null;
    }

    /// <summary>21 to 24 as EDTF has them, or null.</summary>
    public static int? Season(TokenText text, int at) => BySeason.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text.Word(at), out var season) ? season : null;

    private static Dictionary<string, int> ByWord(string[] names, int first) =>
        names.SelectMany((words, place) => words.Split(' ').Select(word => (word, value: place + first))).ToDictionary(one => one.word, one => one.value, StringComparer.Ordinal);
}
