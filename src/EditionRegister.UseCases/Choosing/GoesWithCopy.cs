namespace EditionRegister.UseCases.Choosing;

/// <summary>In which deeds the sheets of a copy of a set go with it, where nothing else is said: those that say where it is, or whose. A price, an inscription or a certificate is the copy's own.</summary>
internal static class GoesWithCopy
{
    private static readonly HashSet<string> Deeds = new(StringComparer.Ordinal)
    {
        "put-away", "consign", "return", "lend", "exhibit", "pass-on", "await-collection", "send-away", "hand-over", "find", "record-mishap",
        "sell", "give", "exchange", "bequeath", "take-back-from-buyer", "take-link-back",
    };

    /// <param name="deed">The deed's permanent name.</param>
    public static bool In(string deed) => Deeds.Contains(deed);
}
