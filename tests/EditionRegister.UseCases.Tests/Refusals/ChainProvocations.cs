using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.UseCases.Moves;
using static EditionRegister.UseCases.Tests.Refusals.Studio;

namespace EditionRegister.UseCases.Tests.Refusals;

internal static class ChainProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("before-printed", studio => studio.Register.PutAway.Run(Pile(1, "3"), "Loft", RecordedDate.Read("2026-02-09"))),
        new("before-last-link", studio =>
        {
            studio.Register.PutAway.Run(Pile(1, "3"), "Loft", RecordedDate.Read("2026-03-10"));
            studio.Register.PutAway.Run(Pile(1, "3"), "Studio", RecordedDate.Read("2026-03-09"));
        }),
        new("first-link-stays", studio => studio.Register.TakeLinkBack.Run(Pile(1, "3"), move: true, transfer: false)),
        new("chain-went-on", studio =>
        {
            studio.Register.PutAway.Run(Pile(1, "3"), "Loft");
            var meant = LinksMeant.LastOf(studio.Register.LookAround.Chosen(Pile(1, "3"))[0].Sheets);
            studio.Register.PutAway.Run(Pile(1, "3"), "Studio");
            studio.Register.TakeLinkBack.Run(Pile(1, "3"), move: true, transfer: false, meant);
        }),
        new("is-there-already", studio => studio.Register.PutAway.Run(Pile(1, "3"), "Studio › Drawer 1")),
        new("is-with-someone", studio =>
        {
            studio.Register.Consign.Run(Pile(1, "3"), "Quay Gallery");
            studio.Register.PutAway.Run(Pile(1, "3"), "Loft");
        }),
        new("not-with-them", studio => studio.Register.ReturnImpressions.Run(Pile(1, "3"), "Quay Gallery", "Loft")),
        new("not-away", studio => studio.Register.ReturnImpressions.Run(Pile(1, "3"), null, "Loft")),
        new("sheet-is-gone", studio =>
        {
            studio.Break("UPDATE whereabouts SET to_state = 'gone', to_place = NULL, kind = 'destroyed' WHERE impression = 3");
            studio.Register.PutAway.Run(Pile(1, "3"), "Loft");
        }),
        new("not-theirs-to-sell", studio => Sell(studio, new("Ada Brook", Seller: "Quay Gallery"))),
        new("sold-already", studio =>
        {
            Sell(studio, new("Ada Brook"));
            Sell(studio, new("Adam Fenwright"));
        }),
        new("sold-already", studio =>
        {
            Sell(studio, new(null));
            Sell(studio, new("Ada Brook"));
        }),
        new("sold-to-its-owner", studio => Sell(studio, new("Mira Tolland"))),
        new("net-above-price", studio => studio.Register.SellImpressions.Run(Pile(1, "3"), new("Ada Brook"), new Sale { Price = 18_000, Net = 20_000, Currency = "EUR" })),
    ];

    private static void Sell(Studio studio, SalePeople people) => studio.Register.SellImpressions.Run(Pile(1, "3"), people, new Sale());
}
