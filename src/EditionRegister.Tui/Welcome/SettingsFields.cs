using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Prices;
using EditionRegister.Domain.Sizes;
using EditionRegister.Tui.Asking;

namespace EditionRegister.Tui.Welcome;

/// <summary>The settings of a register as fields of a form: when it is made, and when they are changed.</summary>
internal static class SettingsFields
{
    public const string CurrencyLabel = "Currency of your prices";
    public const string SizesLabel = "Sizes on documents in";
    public const string WritingLabel = "Sizes are written";
    public const string PaperLabel = "Paper for documents";
    public const string LinkLabel = "Address for QR links";

    public static Field Currency(string given) => new(CurrencyLabel, given)
    {
        IsNeeded = true,
        Form = "three letters, such as EUR, GBP or USD",
        Wrong = typed => Money.TryParse("1", typed, out _) ? null : $"“{typed}” is no currency: write three letters, such as EUR, GBP or USD.",
    };

    public static Field Sizes(string given) => Field.OneOf(SizesLabel, ["mm", "in"], given);

    public static Field Writing(string given) => Field.OneOf(WritingLabel, [.. SizeWriting.All.Select(writing => writing.Word)], given);

    public static Field Paper(string given) => Field.OneOf(PaperLabel, [.. PageSize.All.Select(page => page.Word)], given);

    public static Field Link(string given) => new(LinkLabel, given)
    {
        Form = "https://example.org/prints; empty prints no QR codes",
        Wrong = typed => LinkAddress.IsOne(typed) ? null : $"“{typed}” is no address to link to: write {LinkAddress.Form}.",
    };

    public static SizeWriting WritingOf(Form form) => SizeWriting.Of(form[WritingLabel])!;

    public static PageSize PageOf(Form form) => PageSize.Of(form[PaperLabel])!;
}
