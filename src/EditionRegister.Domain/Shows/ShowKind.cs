namespace EditionRegister.Domain.Shows;

/// <summary>The kinds of show there are; the list never grows.</summary>
public static class ShowKind
{
    public static IReadOnlyList<string> Words { get; } = ["exhibition", "sale", "fair", "other"];
}
