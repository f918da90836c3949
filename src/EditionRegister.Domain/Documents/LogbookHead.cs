namespace EditionRegister.Domain.Documents;

/// <summary>The logbook as it stood after entry <paramref name="N"/>; <paramref name="Head"/> is the RFC 6962 tree root in lower-case hex.</summary>
public readonly record struct LogbookHead(long N, string Head);
