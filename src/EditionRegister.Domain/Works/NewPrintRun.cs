using EditionRegister.Domain.Chains;
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

    public string? Note { get; init; }

    /// <summary>yes, no or unknown: printed after the maker's death. Null where nobody said.</summary>
    public string? Posthumous { get; init; }

    /// <summary>Where the pile lies; null leaves it with the maker.</summary>
    public long? Place { get; init; }

    /// <summary>Records the run and every sheet of its pile, each with a code of its own, at the maker's and the maker's.</summary>
    /// <exception cref="RefusedException">The sheets do not balance, or the matrix could not print.</exception>
    public IReadOnlyList<long> Record(Work work, Func<RegisterCode> drawCode, Deed deed)
    {
        var pulled = Pulled();
        Possible(work);

        var run = deed.NewId("print_run");
        deed.Set("print_run", run,
            ("work", work.Id), ("ordinal", work.Runs.Count == 0 ? 1 : work.Runs.Max(known => known.Ordinal) + 1),
            ("purpose", Purpose), ("paper", Paper), ("state", State),
            ("started", Started), ("spoiled", Spoiled), ("unused", Unused), ("held_out", HeldOut),
            ("image_height", ImageHeight), ("image_width", ImageWidth), ("sheet_height", SheetHeight), ("sheet_width", SheetWidth), ("note", Note), ("posthumous", Posthumous));
        deed.SetDate("print_run", run, "printed", Printed);

        List<long> sheets = [];

        for (var i = 1; i <= pulled; i++)
        {
            NewSheet sheet = new(run, i, drawCode(), i > pulled - (HeldOut ?? 0) ? "held-out" : "pulled");
            sheets.Add(sheet.Record(FirstPosition(work), FirstOwner(work), Printed, deed));
        }

        return sheets;
    }

    private int Pulled()
    {
        foreach (var (what, count) in new[] { ("Sheets started", Started), ("Sheets spoiled", Spoiled), ("Unused sheets", Unused), ("Sheets held out", HeldOut), ("The pile", Pile) })
        {
            if (count is < 0 or > Most)
            {
                throw WorkRefusals.BadCount(what);
            }
        }

        var pulled = Started is { } started ? FromStarted(started, Spoiled ?? 0, Unused ?? 0) : Pile ?? throw WorkRefusals.PileNotCounted();

        return (HeldOut ?? 0) > pulled ? throw WorkRefusals.TooManyHeldOut(HeldOut ?? 0, pulled) : pulled;
    }

    private int FromStarted(int started, int spoiled, int unused)
    {
        var left = started - spoiled - unused;

        return left < 0 ? throw WorkRefusals.TooFewStarted(started, spoiled, unused)
            : Pile is { } pile && pile != left ? throw WorkRefusals.Unbalanced(started, spoiled, unused, pile)
            : left;
    }

    private void Possible(Work work)
    {
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

        if (work.Matrices.FirstOrDefault(matrix => MatrixDeeds.IsFinal(matrix.Fate) && !IsRestrikeOfCancelled(matrix) && matrix.FateDate.SurelyBefore(Printed)) is { } gone)
        {
            throw WorkRefusals.PrintedAfterFate(work, gone);
        }
    }

    // A cancelled plate still prints: a restrike of it shows the lines, and is disclosed as what it is.
    private bool IsRestrikeOfCancelled(Matrix matrix) => Purpose == "restrike" && matrix.Fate == "cancelled";

    private Position FirstPosition(Work work) =>
        Place is { } place ? Position.InPlace(place) : work.FirstOwnerOf(Posthumous) is { } maker ? Position.With(maker.Id) : Position.Unknown;

    private Owner FirstOwner(Work work) => work.FirstOwnerOf(Posthumous) is { } maker ? Owner.Known(maker.Id) : Owner.Unknown;
}
