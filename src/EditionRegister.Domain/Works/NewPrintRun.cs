using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Domain.Works;

/// <summary>A print run as it is first recorded: what was counted, and so how many sheets lie in the pile. Lengths are micrometres.</summary>
public sealed record NewPrintRun
{
    private const int Most = 99_999;

    /// <summary>edition, proofing, restrike or unknown.</summary>
    public string Purpose { get; init; } = "edition";

    public string? Paper { get; init; }

    public string? State { get; init; }

    public RecordedDate Printed { get; init; } = RecordedDate.None;

    public int? Started { get; init; }

    public int? Spoiled { get; init; }

    public int? Unused { get; init; }

    public int? HeldOut { get; init; }

    /// <summary>Sheets counted in the pile, proofs held out included; worked out from the others when not given.</summary>
    public int? Pile { get; init; }

    public long? ImageHeight { get; init; }

    public long? ImageWidth { get; init; }

    public long? SheetHeight { get; init; }

    public long? SheetWidth { get; init; }

    /// <summary>The size of the image in the words it was given in, where these are more than plain millimetres.</summary>
    public string? ImageWritten { get; init; }

    /// <summary>The size of the sheet in the words it was given in, where these are more than plain millimetres.</summary>
    public string? SheetWritten { get; init; }

    public string? Note { get; init; }

    /// <summary>Impressions that one printed sheet is cut into; null is one.</summary>
    public int? CutInto { get; init; }

    /// <summary>Printed sheets that make one impression, as in a diptych; null is one.</summary>
    public int? MadeOf { get; init; }

    /// <summary>From when the sheets on the rack are dry enough to be sorted.</summary>
    public RecordedDate Ready { get; init; } = RecordedDate.None;

    /// <summary>yes, no or unknown: printed after the maker's death. Null where nobody said.</summary>
    public string? Posthumous { get; init; }

    /// <summary>Printed from the cancelled matrix, as evidence that it is.</summary>
    public bool IsCancellationProof { get; init; }

    /// <summary>Sheets are still on their way through the press: the pile is laid when the last pass is done.</summary>
    public bool IsUnderWay { get; init; }

    /// <summary>Where the pile lies; null leaves it with the maker.</summary>
    public long? Place { get; init; }

    /// <summary>Records the run and every sheet of its pile, each with a code of its own, at the maker's and the maker's.</summary>
    /// <exception cref="RefusedException">The sheets do not balance, or the matrix could not print.</exception>
    public IReadOnlyList<long> Record(Work work, Func<RegisterCode> drawCode, Deed deed)
    {
        var pulled = IsUnderWay ? UnderWay() : Pulled();
        Possible(work);

        var run = deed.NewId("print_run");
        deed.Set("print_run", run,
            ("work", work.Id), ("ordinal", work.Runs.Count == 0 ? 1 : work.Runs.Max(known => known.Ordinal) + 1),
            ("purpose", Purpose), ("state", State),
            ("started", Started), ("spoiled", Spoiled), ("unused", Unused), ("held_out", HeldOut),
            ("image_height", ImageHeight), ("image_width", ImageWidth), ("sheet_height", SheetHeight), ("sheet_width", SheetWidth), ("note", Note),
            ("cut_into", CutInto), ("made_of", MadeOf), ("posthumous", Posthumous), ("cancellation_proof", IsCancellationProof ? "yes" : null));
        deed.SetPaper(run, Paper);
        deed.SetWrittenSizes(run, ImageWritten, SheetWritten);
        deed.SetDate("print_run", run, "printed", Printed);
        deed.SetDate("print_run", run, "ready", Ready);

        return [.. Enumerable.Range(1, pulled).Select(i => new NewSheet(run, i, drawCode(), i > pulled - (HeldOut ?? 0) ? "held-out" : "pulled") { Posthumous = Posthumous }.Record(work, Place, Printed, deed))];
    }

    /// <summary>No sheet lies in a pile yet; what was counted so far must not be more than was started.</summary>
    private int UnderWay()
    {
        Counted();
        var started = Started ?? throw WorkRefusals.StartedNotCounted();

        return (Pile ?? Spoiled ?? HeldOut) is not null ? throw WorkRefusals.PileOfRunUnderWay()
            : started < (Unused ?? 0) ? throw WorkRefusals.TooFewStarted(started, 0, Unused ?? 0)
            : 0;
    }

    private int Pulled()
    {
        Counted();
        var pulled = Started is { } started ? FromStarted(started, Spoiled ?? 0, Unused ?? 0) : Pile ?? throw WorkRefusals.PileNotCounted();

        return (HeldOut ?? 0) > pulled ? throw WorkRefusals.TooManyHeldOut(HeldOut ?? 0, pulled) : pulled;
    }

    private void Counted()
    {
        foreach (var (what, count) in new[]
        {
            ("Sheets started", Started), ("Sheets spoiled", Spoiled), ("Unused sheets", Unused), ("Sheets held out", HeldOut), ("The pile", Pile),
            ("Impressions cut from a sheet", CutInto), ("Sheets of an impression", MadeOf),
        })
        {
            if (count is < 0 or > Most)
            {
                throw WorkRefusals.BadCount(what);
            }
        }
    }

    private int FromStarted(int started, int spoiled, int unused)
    {
        var left = started - spoiled - unused;
        var cut = SheetsCut.Of(CutInto, MadeOf);

        return left < 0 ? throw WorkRefusals.TooFewStarted(started, spoiled, unused)
            : cut.Impressions(left) is not { } pulled ? throw WorkRefusals.Indivisible(started, spoiled, unused, cut)
            : pulled > Most ? throw WorkRefusals.BadCount("The pile")
            : Pile is { } pile && pile != pulled ? throw WorkRefusals.Unbalanced(started, spoiled, unused, pile, cut)
            : (int)pulled;
    }

    private void Possible(Work work)
    {
        if (IsCancellationProof && Purpose != "proofing")
        {
            throw WorkRefusals.CancellationProofIsProofing();
        }

        var forSheetsToKeep = Purpose is "edition" or "restrike";
        var before = work.Runs.FirstOrDefault(run => run.Purpose is "edition" or "restrike");

        if (forSheetsToKeep && work.IsReduction && before is not null)
        {
            throw WorkRefusals.ReductionPrintedAlready(work, before);
        }

        if (Purpose == "edition" && work.Editions.Where(edition => edition.IsOurs).ToList() is { Count: > 0 } ours && ours.TrueForAll(edition => edition.IsClosed))
        {
            throw WorkRefusals.EditionClosed(work);
        }

        var gone = work.Matrices.Where(matrix => MatrixDeeds.IsFinal(matrix.Fate) && matrix.FateDate.SurelyBefore(Printed)).ToList();

        // A trial may be pulled from the others alone; sheets to keep need every one of them.
        if (gone.FirstOrDefault(matrix => !PrintsOn(matrix)) is { } gap && (forSheetsToKeep || gone.Count == work.Matrices.Count))
        {
            throw WorkRefusals.PrintedAfterFate(work, gap);
        }
    }

    /// <summary>A cancelled matrix still prints: the proof that it is cancelled, and a restrike that says so.</summary>
    private bool PrintsOn(Matrix gone) => gone.Fate == "cancelled" && (IsCancellationProof || Purpose == "restrike");
}
