using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Shows;
using static EditionRegister.UseCases.Tests.Refusals.Studio;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>Shows, and what is listed for them.</summary>
internal static class ShowProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("show-name-missing", studio => studio.Register.MakeShow.Run(new NewShow { Name = " " })),
        new("show-kind-unknown", studio => studio.Register.MakeShow.Run(new NewShow { Name = "Open studio", Kind = "party" })),
        new("show-dates-crossed", studio => studio.Register.MakeShow.Run(new NewShow { Name = "Open studio", Opens = RecordedDate.Read("2026-06-12"), Closes = RecordedDate.Read("2026-05") })),
        new("show-dates-crossed", studio =>
        {
            studio.Register.MakeShow.Run(new NewShow { Name = "Open studio", Opens = RecordedDate.Read("2026-06-12") });
            studio.Register.EditShow.Run(1, new ShowCorrection { Closes = RecordedDate.Read("2025") });
        }),
        new("show-not-found", studio => studio.Register.LookAround.Show(7)),
        new("show-not-found", studio => studio.Register.LookAround.Chosen(new() { Show = 7 })),
        new("show-lists-already", studio => Listed(studio, "1", "1")),
        new("show-sheet-left-out", studio => Listed(studio, "1", "5")),
        new("show-does-not-list", studio =>
        {
            Listed(studio, "1");
            studio.Register.RemoveFromShow.Run(1, Pile(1, "2"));
        }),
        new("nothing-chosen", studio =>
        {
            studio.Register.MakeShow.Run(new NewShow { Name = "Open studio" });
            studio.Register.LookAround.Chosen(new() { Show = 1 });
        }),
        new("changed-meanwhile", studio =>
        {
            studio.Register.MakeShow.Run(new NewShow { Name = "Open studio" });
            var seen = studio.Register.LookAround.Show(1).Show.V;
            studio.Register.EditShow.Run(1, new ShowCorrection { Name = "Open doors" }, seen);
            studio.Register.EditShow.Run(1, new ShowCorrection { Name = "Open house" }, seen);
        }),
        new("batch-built-on", studio =>
        {
            var file = studio.Write("list.csv", "maker,title,number\r\nMira Tolland,Groyne,3/20\r\n");
            var batch = studio.Register.ReadIn.Run(file, []).Batch!.Value;
            studio.Register.MakeShow.Run(new NewShow { Name = "Open studio" });
            var groyne = studio.Register.LookAround.Works()[^1];
            studio.Register.AddToShow.Run(1, Pile(groyne.Id, "1"));
            studio.Register.UndoBatch.Run(batch);
        }),
    ];

    private static void Listed(Studio studio, params string[] places)
    {
        studio.Register.MakeShow.Run(new NewShow { Name = "Open studio" });

        foreach (var place in places)
        {
            studio.Register.AddToShow.Run(1, Pile(1, place));
        }
    }
}
