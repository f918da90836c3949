using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Impressions;
using static EditionRegister.UseCases.Tests.Refusals.Studio;

namespace EditionRegister.UseCases.Tests.Refusals;

internal static class SortingProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("grade-empty", studio => studio.Register.GradeSheets.Run(Pile(1, "3"), new GradeGiven())),
        new("grade-impossible", studio => studio.Register.GradeSheets.Run(Pile(1, "3"), Mark(GradeAspect.Inking, 6))),
        new("grade-marked-and-not", studio => studio.Register.GradeSheets.Run(Pile(1, "3"), Mark(GradeAspect.Inking, 4) with { NotLooked = [GradeAspect.Inking] })),
        new("changed-meanwhile", studio =>
        {
            GradesAsSeen seen = new(studio.Register.LookAround.Chosen(Pile(1, "3"))[0].Sheets);
            studio.Register.GradeSheets.Run(Pile(1, "3"), Mark(GradeAspect.Inking, 2));
            studio.Register.GradeSheets.Run(Pile(1, "3"), Mark(GradeAspect.Inking, 4), seen);
        }),
        new("proposal-nothing-graded", studio => studio.Register.ProposeKept.Run(2, 1, 2)),
        new("proposal-too-few", studio => studio.Register.ProposeKept.Run(2, 1, 4)),
        new("alteration-changes-nothing", studio => studio.Register.AlterSheet.Run(studio.Code(1, 1), new Alteration { What = "number", Became = "1/4" })),
        new("alteration-of-nothing", studio => studio.Register.AlterSheet.Run(studio.Code(1, 3), new Alteration { What = "title" })),
        new("alteration-of-nothing", studio => studio.Register.AlterSheet.Run(studio.Code(1, 3), new Alteration { What = "other" })),
        new("inscription-not-there", studio => studio.Register.AlterSheet.Run(studio.Code(1, 3), new Alteration { What = "inscription", Was = "for Ada", Became = "for Adam" })),
        new("inscription-not-there", studio =>
        {
            studio.Register.InscribeImpressions.Run(Pile(1, "3"), new WhatStandsOnIt { Inscription = "for Ada" });
            studio.Register.InscribeImpressions.Run(Pile(1, "3"), new WhatStandsOnIt { Inscription = "with thanks" });
            studio.Register.AlterSheet.Run(studio.Code(1, 3), new Alteration { What = "inscription", Became = "for Adam" });
        }),
        new("alteration-not-there", studio => studio.Register.AlterSheet.TakeBack(studio.Code(1, 3))),
        new("nothing-to-sign", studio =>
        {
            studio.Register.SignSheets.Done(2, "1-2");
            studio.Register.SignSheets.Done(2);
        }),
        new("nothing-to-sign", studio =>
        {
            studio.Register.GiveNumbers.TakeBack(Pile(6, "1"));
            studio.Register.SignSheets.Done(4);
        }),
        new("signed-already", studio => studio.Register.SignSheets.Done(1, "1")),
        new("worked-over-not-left-out", studio => WorkOver(studio, 3)),
        new("worked-over-not-left-out", studio => WorkOver(studio, 2)),
        new("worked-over-not-the-makers", studio =>
        {
            studio.Register.SellImpressions.Run(Pile(1, "5"), new("Ada Brook"), new Sale());
            WorkOver(studio, 5);
        }),
        new("worked-over-not-here", studio =>
        {
            studio.Register.Consign.Run(Pile(1, "5"), "Quay Gallery");
            WorkOver(studio, 5);
        }),
        new("worked-over-already", studio =>
        {
            WorkOver(studio, 5);
            WorkOver(studio, 5);
        }),
    ];

    private static GradeGiven Mark(GradeAspect aspect, int mark) => new() { Marks = new Dictionary<GradeAspect, int> { [aspect] = mark } };

    private static void WorkOver(Studio studio, int place) => studio.Register.WorkOver.Run(studio.Code(1, place), new WorkingOver { Title = "Harbour by Night" });
}
