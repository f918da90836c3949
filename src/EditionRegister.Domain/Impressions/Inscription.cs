namespace EditionRegister.Domain.Impressions;

/// <summary>The exact transcription of something written, stamped or embossed on a sheet, and where.</summary>
public sealed record Inscription(long Id, int Ordinal, string Side, string Manner, string? Position, string? Text);
