namespace EditionRegister.Domain.Documents;

/// <summary>The logbook as it stood after entry <paramref name="N"/>; <paramref name="Head"/> is the RFC 6962 tree root in lower-case hex.</summary>
public sealed record LogbookHead(long N, string Head)
{
    /// <summary>Before the first entry.</summary>
    public static LogbookHead None { get; } = new(0, "");
}
