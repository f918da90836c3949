using EditionRegister.Domain.Impressions;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Impressions;
using static EditionRegister.UseCases.Tests.Refusals.Studio;

namespace EditionRegister.UseCases.Tests.Refusals;

internal static class ImpressionProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("code-not-found", studio => studio.Register.LookAround.Impression("MEKA-X5ED")),
        new("code-misread", studio => studio.Register.LookAround.Impression("7KQ4-M2X2")),
        new("nothing-chosen", studio => Choose(studio, new())),
        new("numbers-need-edition", studio => Choose(studio, new() { Sheets = "3-7" })),
        new("number-not-given", studio => Choose(studio, Numbers(1, "3"))),
        new("not-in-pile", studio => Choose(studio, Pile(1, "7"))),
        new("chosen-twice", studio => Choose(studio, Pile(1, "3, 3"))),
        new("ranges-empty", studio => Choose(studio, Numbers(1, " "))),
        new("range-part-empty", studio => Choose(studio, Numbers(1, "1,,2"))),
        new("range-unreadable", studio => Choose(studio, Numbers(1, "first to last"))),
        new("range-impossible", studio => Choose(studio, Numbers(1, "0"))),
        new("range-reversed", studio => Choose(studio, Numbers(1, "7-3"))),
        new("range-too-long", studio => Choose(studio, Numbers(1, "1-99999"))),
        new("range-or-code", studio => Choose(studio, Numbers(1, RunAndCode()))),
        new("changed-meanwhile", studio => Meanwhile(studio, seen => studio.Register.PriceImpressions.Run(Pile(1, "3"), 18_000, "EUR", null, seen))),
        new("changed-meanwhile", studio => Meanwhile(studio, seen => studio.Register.SortPulls.Run(Pile(1, "3"), "kept", seen: seen))),
        new("changed-meanwhile", studio => Meanwhile(studio, seen => studio.Register.InscribeImpressions.Run(Pile(1, "3"), new WhatStandsOnIt { Condition = "fine" }, seen))),
        new("sheet-is-numbered", studio => studio.Register.SortPulls.Run(Pile(1, "2"), "spare")),
        new("fault-missing", studio => studio.Register.SortPulls.Run(Pile(1, "3"), "left-out")),
        new("fault-unknown", studio => studio.Register.SortPulls.Run(Pile(1, "3"), "left-out", "sadness")),
        new("inscription-empty", studio => studio.Register.InscribeImpressions.Run(Pile(1, "3"), new WhatStandsOnIt())),
        new("one-sheet-only", studio => studio.Register.InscribeImpressions.Run(Pile(1, "1-2"), new WhatStandsOnIt { Pencilled = "1/4" })),
        new("sheet-not-numbered", studio => studio.Register.InscribeImpressions.Run(Pile(1, "3"), new WhatStandsOnIt { AsSpelled = true })),
    ];

    /// <summary>Another window sorts, prices and describes a sheet between looking and deed.</summary>
    private static void Meanwhile(Studio studio, Action<SheetsAsSeen> deed)
    {
        SheetsAsSeen seen = new(studio.Register.LookAround.Chosen(Pile(1, "3"))[0].Sheets);
        studio.Register.PriceImpressions.Run(Pile(1, "3"), 20_000, "EUR", null);
        studio.Register.SortPulls.Run(Pile(1, "3"), "spare");
        studio.Register.InscribeImpressions.Run(Pile(1, "3"), new WhatStandsOnIt { Condition = "lower left corner bent" });
        deed(seen);
    }

    private static void Choose(Studio studio, ImpressionChoice choice) => studio.Register.LookAround.Chosen(choice);

    /// <summary>Four figures, a dash and four figures whose last answers for the others: a code, and a run of numbers.</summary>
    private static string RunAndCode() =>
        Enumerable.Range(2222, 7777).Select(last => FormattableString.Invariant($"2222-{last}"))
            .First(text => !text.Contains('0', StringComparison.Ordinal) && !text.Contains('1', StringComparison.Ordinal) && Domain.Codes.RegisterCode.TryParse(text, out _));
}
