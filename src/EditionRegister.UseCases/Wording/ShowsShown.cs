using EditionRegister.Domain.Shows;

namespace EditionRegister.UseCases.Wording;

/// <summary>A show in half a sentence, and what was recorded of it, said alike by commands and rooms.</summary>
public static class ShowsShown
{
    /// <summary>“Open studio 2026”, sale, 2026-06-12 to 2026-06-14.</summary>
    public static string Of(Show show) => string.Join(", ", new[] { $"“{show.ShownName}”", show.Kind == "other" ? null : show.Kind, When(show) }.OfType<string>());

    public static string Recorded(Show show) => $"Show {Counted.Figure(show.Id)} recorded: {Of(show)}.";

    public static string PutRight(Show show) => $"Show {Counted.Figure(show.Id)} put right: {Of(show)}.";

    public static string Listed(int sheets, string show, int all) => $"{Counted.Sheets(sheets)} listed for “{show}”; {Counted.Figure(all)} in all.";

    public static string TakenOff(int sheets, string show, int all) => $"{Counted.Sheets(sheets)} taken off the list of “{show}”; {Counted.Figure(all)} in all.";

    /// <summary>2026-06-12 to 2026-06-14; null where neither is known.</summary>
    public static string? When(Show show) => (show.Opens.Text, show.Closes.Text) switch
    {
        ({ } opens, { } closes) when opens != closes => $"{opens} to {closes}",
        ({ } opens, { }) => opens,
        ({ } opens, null) => $"from {opens}",
        (null, { } closes) => $"until {closes}",
        _ => null,
    };
}
