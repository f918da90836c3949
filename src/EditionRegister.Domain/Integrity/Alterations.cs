using EditionRegister.Domain.Impressions;

namespace EditionRegister.Domain.Integrity;

/// <summary>What was altered on a sheet, recalled where its pencil and the record disagree.</summary>
internal static class Alterations
{
    /// <summary>The remedy, and after it what is on record as changed on the sheet itself.</summary>
    public static string Recall(Impression sheet, string what, string remedy)
    {
        List<string> changes = [.. sheet.Changes.Where(change => change.What == what).Select(change => $"{Told(change.Was)} became {Told(change.Became)} ({change.Changed})")];

        return changes.Count == 0 ? remedy : $"{remedy} On record as altered on the sheet: {InWords.List(changes)}.";
    }

    private static string Told(string? text) => text is null ? "nothing" : $"“{text}”";
}
