using System.Diagnostics.CodeAnalysis;
using EditionRegister.Domain.Reading.Sizes;

namespace EditionRegister.Domain.Sizes;

/// <summary>A size as the register keeps it: height and width, and the words it was written in where these are more than plain millimetres.</summary>
public sealed record RecordedSize(Size Size, string? Written)
{
    /// <summary>Shown next to every field and in every message that asks for a size.</summary>
    public const string Form = "310 x 220 (height x width in millimetres), 12 1/4 x 8 5/8 in or 31 x 22 cm";

    /// <summary>How the words were read, for a person to see; null where it is plain millimetres.</summary>
    public string? InOtherWords { get; private init; }

    /// <param name="text">As typed: plain millimetres, or in words.</param>
    /// <param name="part">What it is the size of: where the words give several sizes, the one named for it.</param>
    /// <param name="read">The size.</param>
    /// <param name="whyNot">A whole sentence where there is none.</param>
    public static bool TryRead(string? text, SizePart part, [NotNullWhen(true)] out RecordedSize? read, [NotNullWhen(false)] out string? whyNot)
    {
        var written = text?.Trim() ?? "";

        if (Size.TryParseMillimetres(written, out var plain))
        {
            (read, whyNot) = (new RecordedSize(plain, null), null);

            return true;
        }

        var words = SizeReader.SizeOf(written, part);
        read = words.Size is { } size ? new RecordedSize(size, written) { InOtherWords = words.Explain() } : null;
        whyNot = read is null ? words.WhyNot ?? $"It gives no size. Write {Form}." : null;

        return read is not null;
    }
}
