namespace EditionRegister.Domain.Impressions;

/// <summary>The exact transcription of something written, stamped or embossed on a sheet, and where.</summary>
public sealed record Inscription(long Id, int Ordinal, string Side, string Manner, string? Position, string? Text)
{
    /// <summary>What was read in it of number, edition and state; null where nothing was.</summary>
    public SaidOfNumber? Says { get; init; }

    /// <summary>Who drew, engraved or printed, as the lettering says.</summary>
    public IReadOnlyList<InscribedRole> Roles { get; init; } = [];
}

/// <summary>What somebody did for the print, as its lettering says; the name as it stands there.</summary>
public sealed record InscribedRole(long Id, int Ordinal, string Role, string? Name);
