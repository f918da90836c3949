using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Stock;

/// <summary>Records stock-takes, and puts the register right by what was found.</summary>
public static class StockDeeds
{
    /// <param name="take">Where, why, when and by whom; its lines and ids are not looked at.</param>
    /// <param name="found">Line by line.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <returns>The number of the stock-take.</returns>
    /// <exception cref="RefusedException">nothing-to-count.</exception>
    public static long Record(StockTake take, IReadOnlyList<StockFound> found, Deed deed)
    {
        if (found.Count == 0)
        {
            throw StockRefusals.NothingToCount();
        }

        var id = deed.NewId("stock_take");
        deed.Set("stock_take", id, ("place", take.Place), ("occasion", take.Occasion), ("person", take.Person), ("note", take.Note));
        deed.SetDate("stock_take", id, "taken", take.Taken);

        for (var at = 0; at < found.Count; at++)
        {
            var (code, thing, outcome) = found[at];
            deed.Set("stock_take_line", deed.NewId("stock_take_line"),
                ("stock_take", id), ("ordinal", at + 1), ("code", code), ("impression", thing?.Impression), ("matrix", thing?.Matrix), ("outcome", outcome));
        }

        return id;
    }

    /// <summary>A sheet that was found in a place: put away there; found again, where it was lost; come back, where someone had it.</summary>
    /// <exception cref="RefusedException">before-printed or before-last-link.</exception>
    public static void PutHere(Work work, Impression sheet, long place, RecordedDate date, Deed deed) =>
        Move(work, sheet, HowItCame(work, sheet), Position.InPlace(place), date, deed);

    /// <summary>A sheet that is not where it should be: nobody knows where it is.</summary>
    /// <exception cref="RefusedException">before-printed or before-last-link.</exception>
    public static void LoseSight(Work work, Impression sheet, RecordedDate date, Deed deed) =>
        Move(work, sheet, MoveKind.Lost, Position.Unknown, date, deed);

    /// <summary>A block or plate that was found in a place: it lies there, and nobody else has it.</summary>
    public static void PutHere(Matrix matrix, long place, Deed deed) => deed.Set("matrix", matrix.Id, ("place", place), ("keeper", FactValue.Null));

    /// <summary>A block or plate that is not where it should be.</summary>
    public static void LoseSight(Matrix matrix, Deed deed) => deed.Set("matrix", matrix.Id, ("place", FactValue.Null));

    /// <summary>By which move a sheet that is found in a place came there.</summary>
    public static MoveKind HowItCame(Work work, Impression sheet)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(sheet);

        return sheet.Where switch
        {
            { State: "gone" } => MoveKind.Found,
            { State: "unknown" } when sheet.Whereabouts[^1].Kind is "lost" or "stolen" => MoveKind.Found,
            { State: "with", Holder: { } holder } when work.Makers.All(maker => maker.Id != holder) => MoveKind.Returned,
            _ => MoveKind.PutAway,
        };
    }

    /// <summary>What is handed over, by the kind of the handing: consigned, lent or exhibited.</summary>
    /// <param name="work">The work the sheets are of.</param>
    /// <param name="sheets">What goes.</param>
    /// <param name="handing">To whom, and on what terms.</param>
    /// <param name="date">When.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <exception cref="RefusedException">is-with-someone, sheet-is-gone, before-printed or before-last-link.</exception>
    public static void HandOver(Work work, IReadOnlyList<Impression> sheets, Handing handing, RecordedDate date, Deed deed)
    {
        foreach (var sheet in sheets)
        {
            if (sheet.Where is { State: "gone" })
            {
                throw ChainRefusals.Gone(sheet);
            }

            if (sheet.Where is { State: "with", Holder: { } holder } && work.Makers.All(maker => maker.Id != holder))
            {
                throw StockRefusals.NotHereToGo(sheet, WhereInWords.Of(work, sheet));
            }

            var link = Move(work, sheet, handing.Kind, Position.With(handing.To), date, deed);
            deed.Set("whereabouts", link, ("rate", handing.Rate), ("show", handing.Show));
            deed.SetDate("whereabouts", link, "until", handing.Until);
        }
    }

    private static long Move(Work work, Impression sheet, MoveKind kind, Position to, RecordedDate date, Deed deed)
    {
        ChainDates.RunForwards(work, sheet, date, sheet.Whereabouts.Select(link => (link.Kind, link.Moved)));

        return ChainFacts.Move(sheet.Id, sheet.Whereabouts.Count + 1, kind, sheet.Where, to, date, deed);
    }
}

/// <summary>To whom sheets are handed over and as what; the rate is a consignee's share in hundredths of a per cent.</summary>
public sealed record Handing(MoveKind Kind, long To, RecordedDate Until, int? Rate, long? Show);
