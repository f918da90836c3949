using EditionRegister.Domain.People;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Documents;

/// <summary>
/// What belongs in pencil under the image of one sheet: the number left, the title in the middle, the signature right. Common practice, no source.
/// A part is empty where there is nothing to write.
/// </summary>
public sealed record PencilText(string Number, string Title, string Signature)
{
    /// <summary>What stands on the sheet already comes first; else what the register has for it.</summary>
    public static PencilText For(Work work, Impression impression)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(impression);

        return new PencilText(
            Written(impression.Pencilled) ?? work.NumberingOf(impression)?.Spell(impression.Number) ?? "",
            Written(impression.Titled) ?? (work.TitleState == "untitled" ? "Untitled" : Written(work.Title) ?? ""),
            Written(impression.Signature) ?? string.Join(", ", work.Makers.Select(maker => maker.CreditText)));
    }

    private static string? Written(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
