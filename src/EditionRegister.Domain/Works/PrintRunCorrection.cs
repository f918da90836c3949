using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Domain.Works;

/// <summary>What is put right about a print run; null leaves a fact as it is. The sheets must balance again. Lengths are micrometres.</summary>
public sealed record PrintRunCorrection
{
    public string? Paper { get; init; }

    public string? State { get; init; }

    public RecordedDate? Printed { get; init; }

    public int? Started { get; init; }

    public int? Spoiled { get; init; }

    public int? Unused { get; init; }

    public int? HeldOut { get; init; }

    public long? ImageHeight { get; init; }

    public long? ImageWidth { get; init; }

    public long? SheetHeight { get; init; }

    public long? SheetWidth { get; init; }

    /// <summary>The size of the image in the words it was given in; null where it is plain millimetres.</summary>
    public string? ImageWritten { get; init; }

    /// <summary>The size of the sheet in the words it was given in; null where it is plain millimetres.</summary>
    public string? SheetWritten { get; init; }

    public string? Note { get; init; }

    /// <summary>Impressions that one printed sheet is cut into.</summary>
    public int? CutInto { get; init; }

    /// <summary>Printed sheets that make one impression.</summary>
    public int? MadeOf { get; init; }

    /// <summary>From when the sheets on the rack are dry enough to be sorted.</summary>
    public RecordedDate? Ready { get; init; }

    /// <summary>yes, no or unknown: printed after the maker's death.</summary>
    public string? Posthumous { get; init; }

    /// <summary>yes or no: printed from the cancelled matrix, as evidence.</summary>
    public string? CancellationProof { get; init; }

    /// <exception cref="RefusedException">sheets-do-not-balance or sheets-do-not-divide, with the arithmetic; cancellation-proof-is-proofing.</exception>
    public void Record(Work work, PrintRun run, Deed deed)
    {
        Balanced(work, run);

        if (CancellationProof == "yes" && run.Purpose != "proofing")
        {
            throw WorkRefusals.CancellationProofIsProofing();
        }

        foreach (var (fact, value) in Changes().Where(change => change.Fact is not ("printed" or "ready" or "paper" or "image_written" or "sheet_written")))
        {
            deed.Set("print_run", run.Id, (fact, value));
        }

        if (Paper is not null)
        {
            deed.SetPaper(run.Id, Paper);
        }

        // A size that is put right is put right with its words.
        deed.SetWrittenSizes(run.Id, Written(ImageHeight ?? ImageWidth, ImageWritten, run.ImageWritten), Written(SheetHeight ?? SheetWidth, SheetWritten, run.SheetWritten));

        if (Printed is not null)
        {
            deed.SetDate("print_run", run.Id, "printed", Printed);
        }

        if (Ready is not null)
        {
            deed.SetDate("print_run", run.Id, "ready", Ready);
        }
    }

    /// <summary>The facts that are put right, with what they are to be; a date as it is written.</summary>
    public IEnumerable<(string Fact, FactValue Value)> Changes() => new (string Fact, FactValue Value)[]
    {
        ("paper", Paper), ("state", State), ("printed", Printed?.Text), ("started", Started), ("spoiled", Spoiled), ("unused", Unused), ("held_out", HeldOut),
        ("image_height", ImageHeight), ("image_width", ImageWidth), ("sheet_height", SheetHeight), ("sheet_width", SheetWidth), ("note", Note),
        ("image_written", ImageWritten), ("sheet_written", SheetWritten), ("cut_into", CutInto), ("made_of", MadeOf), ("ready", Ready?.Text), ("posthumous", Posthumous), ("cancellation_proof", CancellationProof),
    }.Where(change => !change.Value.IsNull);

    private static string? Written(long? length, string? written, string? before) => length is null ? written ?? before : written;

    private void Balanced(Work work, PrintRun run)
    {
        var pile = work.Impressions.Count(sheet => sheet.Run == run.Id);
        var cut = SheetsCut.Of(CutInto ?? run.CutInto, MadeOf ?? run.MadeOf);

        if ((Started ?? run.Started) is { } started)
        {
            var (spoiled, unused) = (Spoiled ?? run.Spoiled ?? 0, Unused ?? run.Unused ?? 0);
            var left = started - spoiled - unused;

            if (run.IsUnderWay(pile) && Spoiled is null ? left < 0 : cut.Impressions(left) != pile)
            {
                throw left < 0 ? WorkRefusals.TooFewStarted(started, spoiled, unused)
                    : cut.Impressions(left) is null ? WorkRefusals.Indivisible(started, spoiled, unused, cut)
                    : WorkRefusals.Unbalanced(started, spoiled, unused, pile, cut);
            }
        }

        if (HeldOut > pile && !run.IsUnderWay(pile))
        {
            throw WorkRefusals.TooManyHeldOut(HeldOut.Value, pile);
        }
    }
}
