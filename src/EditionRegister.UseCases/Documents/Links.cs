using EditionRegister.Domain;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.UseCases.Documents;

/// <summary>What a QR code on paper leads to.</summary>
internal static class Links
{
    /// <summary>Base URL, a slash, the code as stored; null where the register has no base URL.</summary>
    public static string? Of(RegisterSettings settings, Impression sheet) => settings.BaseUrl is { } address ? $"{address}/{sheet.Code}" : null;
}
