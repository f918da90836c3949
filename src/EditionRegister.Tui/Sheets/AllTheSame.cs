using EditionRegister.Domain;

namespace EditionRegister.Tui.Sheets;

/// <summary>A refusal of the second of two deeds that were asked for at once: what the first one recorded is said before it.</summary>
internal static class AllTheSame
{
    public static RefusedException Refused(string recorded, RefusedException refusal) =>
        new(refusal.Name, $"{recorded} But: {refusal.Message.Replace("Nothing was changed", "Nothing else was changed", StringComparison.Ordinal)}");
}
