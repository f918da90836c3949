using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.ReadingIn;
using static EditionRegister.UseCases.Tests.Refusals.Studio;

namespace EditionRegister.UseCases.Tests.Refusals;

internal static class MoveProvocations
{
    private static readonly Going Lent = new(MoveKind.Lent, null);

    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("until-before-it-begins", studio => studio.Register.SendAway.Run(Pile(1, "3"), new SentTo("Ada Brook"), Lent with { Moved = On("2026-03-02"), Until = On("2026-03-01") })),
        new("sheet-is-missing", studio =>
        {
            studio.Register.RecordMishap.Run(Pile(1, "3"), MoveKind.Stolen, On("2026-03-02"));
            studio.Register.PutAway.Run(Pile(1, "3"), "Loft");
        }),
        new("sheet-not-missing", studio => studio.Register.FindAgain.Run(Pile(1, "3"), new SentTo(null))),
        new("not-consigned", studio => studio.Register.SendAway.Run(Pile(1, "3"), new SentTo("Ada Brook"), new Going(MoveKind.SubConsigned, null))),
        new("passed-on-in-a-circle", studio =>
        {
            studio.Register.Consign.Run(Pile(1, "3"), "Quay Gallery");
            studio.Register.SendAway.Run(Pile(1, "3"), new SentTo("Ada Brook"), new Going(MoveKind.SubConsigned, null));
            studio.Register.SendAway.Run(Pile(1, "3"), new SentTo("Quay Gallery"), new Going(MoveKind.SubConsigned, null));
        }),
        new("nobody-to-collect", studio => studio.Register.HandOver.Run(Pile(1, "3"))),
        new("reserved-already", studio =>
        {
            studio.Register.ReserveSheets.Run(Pile(1, "3"), "Ada Brook", until: On("2026-12-01"));
            studio.Register.ReserveSheets.Run(Pile(1, "3"), null);
        }),
        new("not-ours-to-reserve", studio =>
        {
            studio.Register.SellImpressions.Run(Pile(1, "3"), new("Ada Brook"), new Sale());
            studio.Register.ReserveSheets.Run(Pile(1, "3"), "Adam Fenwright");
        }),
        new("not-reserved", studio => studio.Register.LiftReservation.Run(Pile(1, "3"))),
        new("reserved-for-another", studio =>
        {
            studio.Register.ReserveSheets.Run(Pile(1, "3"), "Ada Brook", until: On("2026-12-01"));
            studio.Register.PassSheets.Run(Pile(1, "3"), "Adam Fenwright", null, new Passing(MoveKind.Given, null));
        }),
        new("on-approval-with-another", studio =>
        {
            studio.Register.SendAway.Run(Pile(1, "3"), new SentTo("Ada Brook"), new Going(MoveKind.OnApproval, null) { Until = On("2026-05-01") });
            studio.Register.SellImpressions.Run(Pile(1, "3"), new("Adam Fenwright"), new Sale());
        }),
        new("not-sold-last", studio => studio.Register.TakeBackFromBuyer.Run(Pile(1, "3"), null, new BuyersReturn())),
        new("step-not-found", studio => studio.Register.AmendChain.Move(studio.Code(1, 3), new AmendedStep(7), null, new MoveCorrection { Note = "late" })),
        new("first-step-keeps-its-kind", studio => studio.Register.AmendChain.Move(studio.Code(1, 3), new AmendedStep(1), null, new MoveCorrection { Kind = MoveKind.Found })),
        new("step-of-the-other-chain", studio => studio.Register.AmendChain.Move(studio.Code(1, 3), new AmendedStep(1, Amending.PutAfter), null, new MoveCorrection { Kind = MoveKind.Sold })),
        new("chain-would-break", studio =>
        {
            studio.Register.RecordMishap.Run(Pile(1, "3"), MoveKind.Destroyed, On("2026-03-20"));
            studio.Register.AmendChain.Move(studio.Code(1, 3), new AmendedStep(2, Amending.PutAfter), new SentTo("Ada Brook"), new MoveCorrection { Kind = MoveKind.Lent });
        }),
        new("chain-would-break", studio => studio.Register.AmendChain.Move(studio.Code(1, 3), new AmendedStep(1, Amending.PutAfter), new SentTo("Ada Brook"), new MoveCorrection { Kind = MoveKind.Lent, Date = On("2026-01-02") })),
        new("chain-would-break", studio =>
        {
            studio.Register.SellImpressions.Run(Pile(1, "3"), new("Ada Brook"), new Sale { Date = On("2026-03-05") });
            studio.Register.AmendChain.Transfer(studio.Code(1, 3), new AmendedStep(1, Amending.PutAfter), new AmendedPeople("Ada Brook"), new TransferCorrection { Kind = MoveKind.Given });
        }),
        new("nothing-put-right", studio => studio.Register.AmendChain.Move(studio.Code(1, 3), new AmendedStep(1), null, new MoveCorrection())),
        new("batch-not-undoable", studio =>
        {
            studio.Register.PutAway.Run(new ImpressionChoice { Sheets = $"{studio.Code(1, 3)}, {studio.Code(2, 1)}" }, "Loft");
            var batch = studio.Register.LookAround.Logbook(1)[0].Batch!.Value;
            studio.Register.UndoBatch.Run(batch);
            studio.Register.UndoBatch.Run(studio.Register.LookAround.Logbook(1)[0].Batch!.Value);
        }),
        new("numbers-of-one-numbering", _ => KnownPart.Read("1-3, A/P I")),
        new("known-number-twice", _ => KnownPart.Read("1-3, 2")),
        new("no-old-edition", studio => studio.Register.KnownNumbers.Sold(1, KnownPart.Read("1-3"))),
        new("old-size-not-said", studio => studio.Register.KnownNumbers.Sold(3, KnownPart.Read("1-3"))),
        new("old-size-otherwise", studio => studio.Register.KnownNumbers.Sold(6, KnownPart.Read("5-7") with { Size = 30 })),
        new("beyond-old-size", studio => studio.Register.KnownNumbers.Sold(3, KnownPart.Read("28-31") with { Size = 30 })),
        new("held-number-not-read", studio => studio.Register.HoldSheet.Run(new HeldSheet { Title = "Weir", Number = "80/75" })),
        new("held-words-name-no-number", studio => studio.Register.HoldSheet.Run(new HeldSheet { Title = "Weir", Number = "about 5" })),
        new("held-words-name-no-number", studio => studio.Register.HoldSheet.Run(new HeldSheet { Title = "Weir", Number = "S/P 3/10" })),
        new("held-words-name-no-number", studio => studio.Register.HoldSheet.Run(new HeldSheet { Title = "Weir", Number = "working proof 2" })),
        new("held-words-name-no-number", studio => studio.Register.HoldSheet.Run(new HeldSheet { Title = "Weir", Number = "edition of 75" })),
        new("held-words-name-no-number", studio => studio.Register.HoldSheet.Run(new HeldSheet { Title = "Weir", Number = "second state of three" })),
        new("held-words-name-no-number", studio => studio.Register.HoldSheet.Run(new HeldSheet { Title = "Weir", Number = "unnumbered" })),
        new("held-words-name-no-number", studio => studio.Register.HoldSheet.Run(new HeldSheet { Title = "Weir", Number = "3(?)/25" })),
        new("total-too-small", studio => studio.Register.HoldSheet.Run(new HeldSheet { Title = "Weir", Number = "14/75", Total = 70 })),
        new("held-is-ours", studio => studio.Register.HoldSheet.Run(new HeldSheet { Title = "Harbour", Maker = "Mira Tolland", Number = "5/75" })),
    ];

    private static RecordedDate On(string date) => RecordedDate.Read(date);
}
