using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Sets;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Wording;

/// <summary>What is said of sets of prints, by commands and rooms alike.</summary>
public static class SetsSaid
{
    public static string Made(Work work) => $"{Called.Work(work)} is a {SetForm.NameOf(work.Set!.Form)}, {SignedOn(work.Set.SignedOn)}.";

    public static string PutRight(Work work) => $"Set {Called.Work(work)} put right: a {SetForm.NameOf(work.Set!.Form)}, {SignedOn(work.Set.SignedOn)}.";

    public static string PartsAdded(Work work, int parts) => $"{Counted.Of(parts, "part")} added to {Called.Work(work)}; {Counted.Figure(work.Set!.Parts.Count)} in all.";

    public static string PartRemoved(Work work, Work part) => $"{Called.Work(part)} is no part of {Called.Work(work)} any more; {Counted.Figure(work.Set!.Parts.Count)} in all.";

    public static string Gathered(Work work, int sheets) => sheets == 0
        ? $"Nothing was left to gather into the copies of {Called.Work(work)}."
        : $"{Counted.Sheets(sheets)} gathered into the copies of {Called.Work(work)}.";

    public static string TakenOut(Work work, int sheets) => $"{Counted.Sheets(sheets)} taken out of the copies of {Called.Work(work)}; {(sheets == 1 ? "it stays where it is" : "they stay where they are")}.";

    public static string SignedOn(string signedOn) => signedOn switch
    {
        "colophon" => "signed on the colophon",
        "sheets" => "signed on the sheets",
        "both" => "signed on the colophon and the sheets",
        _ => "where it is signed is not known",
    };

    /// <summary>A portfolio of 4 parts, signed on the colophon; 3 of 4 copies whole.</summary>
    public static string InShort(SetSeen seen) =>
        $"{SetForm.NameOf(seen.Set.Form)} of {Counted.Of(seen.Set.Parts.Count, "part")}, {SignedOn(seen.Set.SignedOn)}; {HowWhole(seen)}";

    public static string HowWhole(SetSeen seen) =>
        seen.Copies.Count == 0 ? "no copy yet" : $"{Counted.Figure(seen.Copies.Count(copy => seen.Gathered(copy) == seen.Set.Parts.Count))} of {Counted.Of(seen.Copies.Count, "copy", "copies")} gathered";

    /// <summary>3 of 4: without “Ebb”.</summary>
    public static string Holds(SetSeen seen, Impression copy)
    {
        var lacks = seen.Set.Parts.Where(part => SetSeen.In(copy, part) is null).Select(part => $"“{part.Title}”").ToList();

        return lacks.Count == 0 ? $"all {Counted.Figure(seen.Set.Parts.Count)}"
            : lacks.Count == seen.Set.Parts.Count ? "none yet"
            : $"{Counted.Figure(seen.Gathered(copy))} of {Counted.Figure(seen.Set.Parts.Count)}: without {string.Join(", ", lacks)}";
    }

    /// <summary>What lies in one copy, part by part.</summary>
    public static ShownTable InCopy(Work work, Impression copy) => new(
        "What lies in it:",
        [new("part", IsRight: true), new("title"), new("number"), new("code")],
        work.Set is not { } set ? [] :
        [
            .. set.Parts.Select(part => SetSeen.In(copy, part) is { } sheet
                ? (string[])[Counted.Figure(part.Ordinal), part.Title, sheet.Number, sheet.ShownCode]
                : [Counted.Figure(part.Ordinal), part.Title, "none in it", ""]),
        ]);

    /// <summary>Copy 3/20 of “Shoreline” (7KQ4-M2X3); null where it lies in none.</summary>
    public static string? LiesIn(Impression sheet) => sheet.InSet is { } lies ? $"copy {lies.CopyNumber} of “{lies.SetTitle}” ({lies.ShownCopyCode})" : null;
}
