using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Stock;
using EditionRegister.UseCases.Conditions;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Stock;
using static EditionRegister.UseCases.Tests.Refusals.Studio;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>Places moved about, stock taken of them, and sheets examined.</summary>
internal static class StockProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("place-in-itself", studio => studio.Register.EditPlace.Run(studio.Register.RecordPlace.Run("Attic"), new PlaceCorrection { Inside = "Attic" })),
        new("place-in-itself", studio =>
        {
            var attic = studio.Register.RecordPlace.Run("Attic");
            studio.Register.RecordPlace.Run("Attic › Shelf 1 › Box");
            studio.Register.EditPlace.Run(attic, new PlaceCorrection { Inside = "Box" });
        }),
        new("place-known-already", studio =>
        {
            studio.Register.RecordPlace.Run("Attic › Shelf 1");
            studio.Register.EditPlace.Run(studio.Register.RecordPlace.Run("Cellar › Shelf 1"), new PlaceCorrection { Inside = "Attic" });
        }),
        new("scan-misread", studio => Take(studio, "7KQ4-M2X4, drawer 2")),
        new("scan-misread", studio => Take(studio, string.Join(',', Enumerable.Repeat("7KQ4-M2X4", 10)))),
        new("no-codes-scanned", studio => Take(studio, " , ")),
        new("nothing-to-count", studio =>
        {
            studio.Register.RecordPlace.Run("Attic");
            studio.Register.TakeStock.Run(new StockToTake { Place = "Attic", IsEmpty = true }, ScanList.OfTyped(""));
        }),
        new("file-not-found", studio => ScansFromFile.Read(studio.In("scanned.txt"))),
        new("stock-take-not-found", studio => studio.Register.LookAround.StockTake(7)),
        new("stock-take-not-found", studio => studio.Register.SettleStock.Run(7, new StockSettlement { LoseMissing = true })),
        new("not-in-stock-take", studio =>
        {
            Take(studio, studio.Code(1, 3));
            studio.Register.SettleStock.Run(1, new StockSettlement { LoseMissing = true, Only = ScanList.OfTyped(studio.Code(1, 3)) });
        }),
        new("nothing-to-settle", studio =>
        {
            Take(studio, studio.Code(1, 3));
            studio.Register.SettleStock.Run(1, new StockSettlement { PutStrangersAway = true });
        }),
        new("not-a-stock-take", studio =>
        {
            Deliver(studio);
            studio.Register.SettleStock.Run(1, new StockSettlement { PutStrangersAway = true });
        }),
        new("still-out", studio =>
        {
            Deliver(studio);
            studio.Register.ReceiveSheets.Run(new SheetsToReceive { Place = "Loft", From = "Quay Gallery" }, ScanList.OfTyped(studio.Code(1, 3)));
            studio.Register.SettleStock.Run(2, new StockSettlement { LoseMissing = true });
        }),
        new("nothing-awaited", studio => studio.Register.ReceiveSheets.Run(new SheetsToReceive { Place = "Loft", From = "Quay Gallery" }, ScanList.OfTyped(studio.Code(1, 3)))),
        new("not-here-to-go", studio =>
        {
            Deliver(studio);
            Deliver(studio);
        }),
        new("condition-occasion-unknown", studio => studio.Register.ReportCondition.Run(Pile(1, "3"), new ConditionToReport { Occasion = "framing", Summary = "no fault seen" })),
        new("condition-not-said", studio => studio.Register.ReportCondition.Run(Pile(1, "3"), new ConditionToReport())),
        new("remark-misread", studio => Remark(studio, "@lower left")),
        new("condition-term-unknown", studio => Remark(studio, "crease")),
        new("condition-term-unknown", studio => Remark(studio, "wormwood")),
        new("picture-not-of-work", studio => Remark(studio, "foxing #4")),
        new("examined-before-printed", studio => studio.Register.ReportCondition.Run(Pile(1, "3"), new ConditionToReport { Date = RecordedDate.Read("2025"), Summary = "no fault seen" })),
        new("examined-before-last", studio =>
        {
            studio.Register.ReportCondition.Run(Pile(1, "3"), new ConditionToReport { Date = RecordedDate.Read("2026-09-01"), Summary = "no fault seen" });
            studio.Register.ReportCondition.Run(Pile(1, "3"), new ConditionToReport { Date = RecordedDate.Read("2026-08"), Summary = "no fault seen" });
        }),
        new("condition-term-known", studio => studio.Register.RecordConditionTerm.Run("foxing")),
        new("condition-term-misformed", studio => studio.Register.RecordConditionTerm.Run("Frame rub")),
        new("no-condition-report", studio => studio.Register.WriteConditionSheet.Lines(studio.Code(1, 3))),
        new("condition-report-not-found", studio =>
        {
            studio.Register.ReportCondition.Run(Pile(1, "3"), new ConditionToReport { Summary = "no fault seen" });
            studio.Register.WriteConditionSheet.Lines(studio.Code(1, 3), 2);
        }),
    ];

    private static void Take(Studio studio, string codes) => studio.Register.TakeStock.Run(new StockToTake { Place = "Studio › Drawer 1" }, ScanList.OfTyped(codes));

    private static void Deliver(Studio studio) => studio.Register.DeliverSheets.Run(
        new SheetsToDeliver { Place = "Studio", Going = Pile(1, "3"), To = "Quay Gallery", As = MoveKind.Consigned }, ScanList.OfTyped(studio.Code(1, 3)));

    private static void Remark(Studio studio, string remark) => studio.Register.ReportCondition.Run(Pile(1, "3"), new ConditionToReport { Remarks = [remark] });
}
