using EditionRegister.Domain.Chains;
using EditionRegister.UseCases.Choosing;
using static EditionRegister.UseCases.Tests.Refusals.Studio;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>The set is “Tide Table”, work 4, whose two sheets are numbered 1/2 and 2/2; its part is “Harbour”, work 1.</summary>
internal static class SetProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("set-not-made", studio => studio.Register.LookAround.Set(4)),
        new("set-made-already", studio => Made(studio).Register.MakeSet.Run(4, "suite")),
        new("set-correction-empty", studio => Made(studio).Register.EditSet.Run(4, null, null, null)),
        new("part-holds-the-set", studio => Made(studio).Register.ChangeSetParts.Add(4, [4])),
        new("part-holds-the-set", studio =>
        {
            Made(studio).Register.MakeSet.Run(1, "suite");
            studio.Register.ChangeSetParts.Add(1, [4]);
        }),
        new("part-there-already", studio => Made(studio).Register.ChangeSetParts.Add(4, [1])),
        new("part-not-in-set", studio => Made(studio).Register.ChangeSetParts.Remove(4, 2)),
        new("part-not-in-set", studio => Put(Made(studio), "1", Pile(2, "1"))),
        new("part-not-in-set", studio => Made(studio).Register.GatherSet.ByNumber(4, null, [2])),
        new("part-is-gathered", studio =>
        {
            Put(Made(studio), "1", Pile(1, "1"));
            studio.Register.ChangeSetParts.Remove(4, 1);
        }),
        new("set-has-no-parts", studio =>
        {
            studio.Register.MakeSet.Run(4, "portfolio");
            studio.Register.GatherSet.ByNumber(4, null);
        }),
        new("copy-not-of-the-set", studio => Made(studio).Register.GatherSet.ByNumber(4, Pile(2, "1"))),
        new("one-copy-only", studio => Put(Made(studio), "1-2", Pile(1, "1"))),
        new("copy-is-not-kept", studio =>
        {
            studio.Register.MakeSet.Run(1, "portfolio");
            studio.Register.ChangeSetParts.Add(1, [2]);
            studio.Register.GatherSet.ByHand(1, Pile(1, "5"), Pile(2, "1"));
        }),
        new("copy-has-no-number", studio =>
        {
            studio.Register.MakeSet.Run(2, "portfolio");
            studio.Register.ChangeSetParts.Add(2, [1]);
            studio.Register.GatherSet.ByNumber(2, Pile(2, "1"));
        }),
        new("part-lacks-the-number", studio =>
        {
            Made(studio).Register.ChangeSetParts.Add(4, [6]);
            studio.Register.GatherSet.ByNumber(4, null);
        }),
        new("nothing-chosen", studio =>
        {
            studio.Register.MakeSet.Run(2, "portfolio");
            studio.Register.ChangeSetParts.Add(2, [1]);
            studio.Register.GatherSet.ByNumber(2, null);
        }),
        new("set-sheet-left-out", studio => Put(Made(studio), "1", Pile(1, "5"))),
        new("sheet-in-a-copy", studio =>
        {
            Put(Made(studio), "1", Pile(1, "1"));
            Put(studio, "2", Pile(1, "1"));
        }),
        new("copy-has-the-part", studio => Put(Made(studio), "1", Pile(1, "1-2"))),
        new("set-sheet-not-ours", studio =>
        {
            Made(studio).Register.SellImpressions.Run(Pile(1, "1"), new("Ada Brook"), new Sale());
            Put(studio, "1", Pile(1, "1"));
        }),
        new("set-sheet-not-here", studio =>
        {
            Made(studio).Register.Consign.Run(Pile(1, "1"), "Quay Gallery");
            Put(studio, "1", Pile(1, "1"));
        }),
        new("copy-not-here", studio =>
        {
            Made(studio).Register.Consign.Run(Numbers(2, "1"), "Quay Gallery");
            Put(studio, "1", Pile(1, "1"));
        }),
        new("sheet-in-no-copy", studio => Made(studio).Register.TakeOutOfSet.Run(4, Pile(1, "1"))),
    ];

    private static Studio Made(Studio studio)
    {
        studio.Register.MakeSet.Run(4, "portfolio", "colophon");
        studio.Register.ChangeSetParts.Add(4, [1]);

        return studio;
    }

    private static void Put(Studio studio, string copies, ImpressionChoice sheets) => studio.Register.GatherSet.ByHand(4, Numbers(2, copies), sheets);
}
