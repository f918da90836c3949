namespace EditionRegister.Domain.Documents;

/// <summary>The address put before <c>/code</c> in the links that QR codes hold.</summary>
public static class LinkAddress
{
    /// <summary>The form of a right one, for fields and messages.</summary>
    public const string Form = "a whole address such as https://example.org/prints, without ? and #";

    public static bool IsOne(string? text) =>
        Uri.TryCreate(text, UriKind.Absolute, out var parsed)
        && parsed.Scheme is "http" or "https"
        && !text.Any(c => c is '?' or '#' or <= ' ' or '\u007F');
}
