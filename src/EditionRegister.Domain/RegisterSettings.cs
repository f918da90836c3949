using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain;

/// <summary>What <c>register.toml</c> says: choices for this register that are not facts about sheets.</summary>
public sealed record RegisterSettings
{
    public required string Name { get; init; }

    /// <summary>Put before <c>/code</c> in every QR link; null prints no links.</summary>
    public string? BaseUrl { get; init; }

    public PageSize Page { get; init; } = PageSize.A4;

    /// <summary>ISO 4217, used where a price names none.</summary>
    public string Currency { get; init; } = "EUR";

    /// <summary>"mm" or "in": how sizes are shown on documents. The register itself keeps micrometres.</summary>
    public string Units { get; init; } = "mm";

    /// <summary>As measured, or rounded as rules for cataloguing have it.</summary>
    public SizeWriting SizeWriting { get; init; } = SizeWriting.Measured;

    /// <summary>Both of them: how sizes are written for people.</summary>
    public SizeStyle Sizes => new(SizeWriting, Units);

    public PrinterOffset PrinterOffset { get; init; }

    /// <summary>The id of the person who writes in this register, or null.</summary>
    public long? By { get; init; }
}
