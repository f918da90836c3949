using EditionRegister.Domain.Shows;

namespace EditionRegister.Cli;

/// <summary>A show in half a sentence.</summary>
internal static class ShowText
{
    /// <summary>“Open studio 2026”, sale, 2026-06-12 to 2026-06-14.</summary>
    public static string Of(Show show) => string.Join(", ", new[] { $"“{show.ShownName}”", show.Kind == "other" ? null : show.Kind, When(show) }.OfType<string>());

    private static string? When(Show show) => (show.Opens.Text, show.Closes.Text) switch
    {
        ({ } opens, { } closes) when opens != closes => $"{opens} to {closes}",
        ({ } opens, { }) => opens,
        ({ } opens, null) => $"from {opens}",
        (null, { } closes) => $"until {closes}",
        _ => null,
    };
}
