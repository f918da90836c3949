using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>The size that a text gives of one part, or the reason why it gives none.</summary>
public sealed record SizeOfPart
{
    private SizeOfPart(Measured? read, string? whyNot) => (Read, WhyNot) = (read, whyNot);

    /// <summary>As it was read, with whether two systems agree; null where none was.</summary>
    public Measured? Read { get; }

    public Size? Size => Read?.Size;

    /// <summary>A whole sentence for a person; null where there is a size.</summary>
    public string? WhyNot { get; }

    /// <summary>To stand beside the field: how it was read, or why not.</summary>
    public string Explain() => Read?.Explain() ?? WhyNot!;

    internal static SizeOfPart In(SizesRead read, SizePart part)
    {
        var named = read.Sizes.Where(size => IsOf(size, part)).ToList();

        return named.Count > 0 ? OneOf(named, part)
            : read.Sizes is [{ Parts: [], Named: null } alone] && read.Declined.Count == 0 ? OneOf([alone], part)
            : new SizeOfPart(null, WhyNone(read, part));
    }

    private static bool IsOf(Measured size, SizePart part) => size.Parts.Contains(part) || (part == SizePart.Sheet && size.Parts.Contains(SizePart.Support));

    private static SizeOfPart OneOf(List<Measured> sizes, SizePart part) =>
        sizes.Exists(size => (size.Height, size.Width) != (sizes[0].Height, sizes[0].Width)) ? new SizeOfPart(null, $"It gives {sizes.Count.ToString(System.Globalization.CultureInfo.InvariantCulture)} sizes of the {part.Word}. Write the one that is meant.")
        : sizes[0].Size is null ? new SizeOfPart(null, $"It gives one length only. Write {Domain.Sizes.Size.Form}.")
        : new SizeOfPart(sizes[0], null);

    private static string WhyNone(SizesRead read, SizePart part) => read.Sizes switch
    {
        [] => read.WhyNot ?? $"It gives no size. Write {Domain.Sizes.Size.Form}.",
        [{ Named: { } name }] => $"It gives the size of {Quoted(name)}, not of the {part.Word}. Write {part.Word}: before the size that is meant.",
        [_] => read.WhyNot!,
        _ => $"It gives several sizes, none of them named for the {part.Word}. Write {part.Word}: before the one that is meant.",
    };

    private static string Quoted(string name) => $"“{Domain.Text.SafeText.Show(name.Length <= 40 ? name : name[..40] + "…")}”";
}
