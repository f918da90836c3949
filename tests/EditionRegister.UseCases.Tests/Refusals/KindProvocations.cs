using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Words;
using EditionRegister.Domain.Works;
using static EditionRegister.UseCases.Tests.Refusals.Studio;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>Kinds of edition and of numbering, short editions and divided ones, and what one sheet is to another.</summary>
internal static class KindProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("reduction-on-demand", studio => studio.Register.DeclareEdition.Run(2, new NewEdition { Printing = "on-demand", Numberings = [NumberingPlan.Read("1-3")] })),
        new("numbering-ambiguous", studio =>
        {
            studio.Register.DeclareEdition.Run(3, new NewEdition { Numberings = [NumberingPlan.Read("deluxe: 1-3"), NumberingPlan.Read("plain: 1-9")] });
            studio.Register.StateNumberFate.Run(5, "2", "never-printed", null);
        }),
        new("sheet-of-another-printing", studio =>
        {
            studio.Register.DeclareEdition.Run(1, new NewEdition { Rank = "restrike", Numberings = [NumberingPlan.Read("1-3")] });
            studio.Register.GiveNumbers.ByHand(5, Pile(1, "3"), "1");
        }),
        new("sheet-of-another-printing", studio =>
        {
            studio.Register.DeclareEdition.Run(1, new NewEdition { Rank = "restrike", Numberings = [NumberingPlan.Read("1-3")] });
            studio.Register.RecordPrintRun.Run(1, new NewPrintRun { Purpose = "restrike", Started = 1, Printed = RecordedDate.Read("2026-03-10") });
            studio.Register.SortPulls.Run(Pile(1, "1") with { Run = 2 }, "kept");
            studio.Register.GiveNumbers.ByHand(1, Pile(1, "1") with { Run = 2 }, "4");
        }),
        new("edition-not-short", studio =>
        {
            studio.Register.GiveNumbers.AsPiled(1, null, null);
            studio.Register.EndShort.Run(1);
        }),
        new("nothing-printed", studio =>
        {
            studio.Register.DeclareEdition.Run(2, new NewEdition { Numberings = [NumberingPlan.Read("1-3")] });
            studio.Register.EndShort.Run(5);
        }),
        new("short-edition-not-ours-whole", studio => studio.Register.EndShort.Run(4)),

        new("word-not-kebab", studio => studio.Register.AddFault.Run(new NewFault("Oil halo", "oil halo"))),
        new("word-known-already", studio => studio.Register.AddFault.Run(new NewFault("crease", "crease"))),
        new("word-known-already", studio => Add(studio, "archive", "Arch.")),
        new("word-name-missing", studio => studio.Register.AddFault.Run(new NewFault("halo", " "))),
        new("technique-id-unfit", studio => studio.Register.AddTechnique.Run(new NewTechnique("plaster-print", "plaster print", "aat:300041365"))),
        new("word-known-already", studio => studio.Register.AddTechnique.Run(new NewTechnique("etching", "etching", null))),
        new("kind-mark-unfit", studio => Add(studio, "twelve-bis", "12 bis")),
        new("kind-mark-taken", studio => Add(studio, "hundredth", "C")),
        new("kind-mark-taken", studio => Add(studio, "artists-own", "A.P.")),
        new("kind-size-without-total", studio => studio.Register.AddKind.Run(new NewKind { Word = "lettered", Mark = "L.C.", Name = "lettered copy", InSize = true, InTotal = false })),
        new("kind-not-own", studio => studio.Register.EditKind.Run("archive", new KindCorrection { Mark = "Arch." })),
        new("kind-nothing-said", studio =>
        {
            Add(studio, "lettered", "L.C.");
            studio.Register.EditKind.Run("lettered", new KindCorrection());
        }),
        new("kind-in-use", studio => Change(studio, new KindCorrection { InSize = true })),
        new("kind-in-use", studio => Change(studio, new KindCorrection { Mark = "Lett." })),

        new("entitlement-overlaps", studio =>
        {
            studio.Register.DivideEdition.Run(1, "1-3", "Mira Tolland");
            studio.Register.DivideEdition.Run(1, "3-4", "Ada Brook");
        }),
        new("entitlement-not-found", studio => studio.Register.DivideEdition.TakeBack(1, "3")),
        new("entitlement-in-part", studio =>
        {
            studio.Register.DivideEdition.Run(1, "1-3", "Mira Tolland");
            studio.Register.DivideEdition.TakeBack(1, "3");
        }),

        new("variant-too-long", studio => studio.Register.VarySheets.Run(Pile(1, "3"), new string('o', 121))),
        new("dedication-too-long", studio => studio.Register.DedicateSheets.Run(Pile(1, "3"), new string('o', 121))),

        new("ghost-of-itself", studio => studio.Register.LinkGhost.Run(studio.Code(1, 3), studio.Code(1, 3))),
        new("ghost-of-another-work", studio => studio.Register.LinkGhost.Run(studio.Code(1, 3), studio.Code(2, 1))),
        new("ghost-already", studio =>
        {
            studio.Register.LinkGhost.Run(studio.Code(1, 3), studio.Code(1, 2));
            studio.Register.LinkGhost.Run(studio.Code(1, 3), studio.Code(1, 4));
        }),
        new("ghost-of-its-ghost", studio =>
        {
            studio.Register.LinkGhost.Run(studio.Code(1, 3), studio.Code(1, 2));
            studio.Register.LinkGhost.Run(studio.Code(1, 4), studio.Code(1, 3));
            studio.Register.LinkGhost.Run(studio.Code(1, 2), studio.Code(1, 4));
        }),
        new("ghost-of-nothing", studio => studio.Register.LinkGhost.TakeBack(studio.Code(1, 3))),

        new("replaced-has-no-number", studio => Replace(studio, 3, 4)),
        new("replacement-not-ours-whole", studio => studio.Register.ReplaceSheet.Run(studio.Code(6, 1), studio.Code(6, 1), new Replacement { Fault = "tear" })),
        new("replaced-is-away", studio =>
        {
            studio.Register.Consign.Run(Pile(1, "2"), "Quay Gallery");
            Replace(studio, 2, 3);
        }),
        new("replacement-fault-missing", studio => studio.Register.ReplaceSheet.Run(studio.Code(1, 2), studio.Code(1, 3), new Replacement())),
        new("spare-is-numbered", studio => Replace(studio, 2, 1)),
        new("spare-is-none", studio => Replace(studio, 2, 5)),
        new("spare-is-signed", studio =>
        {
            studio.Register.InscribeImpressions.Run(Pile(1, "3"), new WhatStandsOnIt { Signed = "yes" });
            Replace(studio, 2, 3);
        }),
        new("spare-is-away", studio =>
        {
            studio.Register.Consign.Run(Pile(1, "3"), "Quay Gallery");
            Replace(studio, 2, 3);
        }),
        new("replacement-of-another-work", studio => studio.Register.ReplaceSheet.Run(studio.Code(1, 2), studio.Code(2, 1), new Replacement { Fault = "tear" })),
    ];

    private static void Replace(Studio studio, int old, int spare) => studio.Register.ReplaceSheet.Run(studio.Code(1, old), studio.Code(1, spare), new Replacement { Fault = "tear" });

    private static void Add(Studio studio, string word, string mark) => studio.Register.AddKind.Run(new NewKind { Word = word, Mark = mark, Name = "lettered copy" });

    private static void Change(Studio studio, KindCorrection correction)
    {
        Add(studio, "lettered", "L.C.");
        studio.Register.DeclareEdition.Run(3, new NewEdition { Numberings = [NumberingPlan.Read("L.C. A-C", studio.Register.LookAround.OwnWords())] });
        studio.Register.EditKind.Run("lettered", correction);
    }
}
