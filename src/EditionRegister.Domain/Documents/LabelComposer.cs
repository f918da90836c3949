using EditionRegister.Domain.People;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Documents;

/// <summary>The few lines by which a person at the drawer knows which sheet lies in a folder; what is not known takes no line.</summary>
public static class LabelComposer
{
    /// <param name="work">The work whole.</param>
    /// <param name="impression">One of its impressions.</param>
    /// <param name="link">What the QR code holds, or null for none.</param>
    /// <param name="sizes">How sizes are written.</param>
    public static Label Of(Work work, Impression impression, string? link, SizeStyle sizes)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(impression);
        ArgumentNullException.ThrowIfNull(sizes);

        string?[] lines =
        [
            $"{NumberOf(work, impression)} {work.ShownTitle}",
            string.Join(", ", work.Makers.Select(maker => maker.CreditText)),
            string.Join(", ", new[] { work.Technique, work.Year.Text }.Where(part => !string.IsNullOrWhiteSpace(part))),
            impression.Variant,
            SizeOf(work.RunOf(impression), sizes),
        ];

        return new Label([.. lines.OfType<string>().Where(line => !string.IsNullOrWhiteSpace(line))], impression.ShownCode, link);
    }

    private static string NumberOf(Work work, Impression impression) =>
        !string.IsNullOrWhiteSpace(impression.Pencilled) ? impression.Pencilled.Trim() : work.NumberOf(impression with { Pencilled = null });

    private static string? SizeOf(PrintRun? run, SizeStyle sizes) =>
        SizeText.Of(run?.ImageHeight, run?.ImageWidth) is { } image ? sizes.Show(image)
        : SizeText.Of(run?.SheetHeight, run?.SheetWidth) is { } sheet ? $"sheet {sizes.Show(sheet)}"
        : null;
}
