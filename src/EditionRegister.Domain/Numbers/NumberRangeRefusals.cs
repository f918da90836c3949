using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Text;

namespace EditionRegister.Domain.Numbers;

internal static class NumberRangeRefusals
{
    public static RefusedException Nothing() => new(
        "ranges-empty",
        $"No impressions were named, so none were chosen. Write them like {NumberRanges.Form}.");

    public static RefusedException EmptyPart(string whole) => new(
        "range-part-empty",
        $"“{SafeText.Show(whole.Trim())}” has a comma with nothing beside it, so no impressions were chosen. Take the comma away or write what is missing.");

    public static RefusedException Unreadable(string part) => new(
        "range-unreadable",
        $"“{SafeText.Show(part)}” is no number, range of numbers or register code, so no impressions were chosen. Write it like {NumberRanges.Form}; in a code, look for a mistyped character.");

    public static RefusedException Impossible(string part) => new(
        "range-impossible",
        $"“{SafeText.Show(part)}” is a number no sheet can bear, so no impressions were chosen. Numbers begin at 1 and end at the size of the edition.");

    public static RefusedException Reversed(string part) => new(
        "range-reversed",
        $"“{SafeText.Show(part)}” ends before it begins, so no impressions were chosen. Write the lower number first.");

    public static RefusedException TooLong(string part) => new(
        "range-too-long",
        $"“{SafeText.Show(part)}” names more than 9,999 numbers, so no impressions were chosen. Split it, or look for a digit too many.");

    public static RefusedException RangeOrCode(string part, RegisterCode code) => new(
        "range-or-code",
        $"“{SafeText.Show(part)}” can be a range of numbers and a register code, so no impressions were chosen. For the code write {code.Text}; for the range write its first number, a comma, and the rest.");
}
