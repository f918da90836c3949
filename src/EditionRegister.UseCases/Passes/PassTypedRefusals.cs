using System.Globalization;
using EditionRegister.Domain;

namespace EditionRegister.UseCases.Passes;

/// <summary>Why what is typed about a pass cannot be read.</summary>
internal static class PassTypedRefusals
{
    public static RefusedException NoCount(string text, string form) =>
        new("pass-count-unreadable", $"“{text}” is no count of sheets. Nothing was changed. Write a word and a count, such as {form}, or a count alone.");

    public static RefusedException WhichInk(string ink, int colours) =>
        new("pass-ink-of-which", string.Create(CultureInfo.InvariantCulture, $"“{ink}” is the ink of one colour, and the pass has {(colours == 0 ? "none" : $"{colours}")}. Nothing was changed. Say each colour with its ink: --colour \"vermilion=oil ink\"."));
}
