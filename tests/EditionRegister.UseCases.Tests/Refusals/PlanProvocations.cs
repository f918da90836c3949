using EditionRegister.Domain.Planning;
using EditionRegister.Domain.Sizes;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>Sheets and paper that cannot be planned.</summary>
internal static class PlanProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("plan-impossible", studio => studio.Register.PlanSheets.Run(20, 4, 0, 0.95)),
        new("plan-impossible", studio => studio.Register.PlanSheets.Run(20, 99, 0.5, 0.95)),
        new("keep-rate-not-known", studio => studio.Register.PlanSheets.Run(20, 4, null, 0.95)),
        new("piece-does-not-fit", _ => Pieces("280x380", "300x400", null, 0, keepsDeckle: false)),
        new("piece-does-not-fit", _ => Pieces("280x500", "270x380", "short", 0, keepsDeckle: false)),
        new("deckle-is-trimmed", _ => Pieces("560x760", "280x380", null, 5_000, keepsDeckle: true)),
    ];

    private static void Pieces(string paper, string piece, string? grain, long trim, bool keepsDeckle)
    {
        Assert.True(Size.TryParseMillimetres(paper, out var sheet) & Size.TryParseMillimetres(piece, out var printed));
        PaperPieces.Of(sheet!, printed!, "long", grain, trim, keepsDeckle);
    }
}
