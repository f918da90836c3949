using System.Globalization;

namespace EditionRegister.Domain.Editions;

/// <summary>A size that somebody was not sure of, in words.</summary>
public static class SizeNotSure
{
    /// <summary>of at least 49, of at most 40, of about 50; null where no figure was named.</summary>
    /// <param name="hedge">at-least, at-most or about.</param>
    /// <param name="size">So many.</param>
    public static string? Of(string? hedge, int? size) => Bare(hedge, size) is { } words ? $"of {words}" : null;

    /// <summary>at least 49: as it is typed where a size is asked for.</summary>
    /// <param name="hedge">at-least, at-most or about.</param>
    /// <param name="size">So many.</param>
    public static string? Bare(string? hedge, int? size) =>
        hedge is not null && size is { } figure ? string.Create(CultureInfo.InvariantCulture, $"{hedge.Replace('-', ' ')} {figure}") : null;
}
