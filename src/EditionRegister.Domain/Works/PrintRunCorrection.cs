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

    public string? Note { get; init; }

    /// <exception cref="RefusedException">sheets-do-not-balance, with the arithmetic.</exception>
    public void Record(Work work, PrintRun run, Deed deed)
    {
        Balanced(work, run);

        foreach (var (fact, value) in Changes().Where(change => change.Fact != "printed"))
        {
            deed.Set("print_run", run.Id, (fact, value));
        }

        if (Printed is not null)
        {
            deed.SetDate("print_run", run.Id, "printed", Printed);
        }
    }

    /// <summary>The facts that are put right, with what they are to be; a date as it is written.</summary>
    public IEnumerable<(string Fact, FactValue Value)> Changes() => new (string Fact, FactValue Value)[]
    {
        ("paper", Paper), ("state", State), ("printed", Printed?.Text), ("started", Started), ("spoiled", Spoiled), ("unused", Unused), ("held_out", HeldOut),
        ("image_height", ImageHeight), ("image_width", ImageWidth), ("sheet_height", SheetHeight), ("sheet_width", SheetWidth), ("note", Note),
    }.Where(change => !change.Value.IsNull);

    private void Balanced(Work work, PrintRun run)
    {
        var pile = work.Impressions.Count(sheet => sheet.Run == run.Id);

        if ((Started ?? run.Started) is { } started)
        {
            var (spoiled, unused) = (Spoiled ?? run.Spoiled ?? 0, Unused ?? run.Unused ?? 0);

            if (started - spoiled - unused != pile)
            {
                throw WorkRefusals.Unbalanced(started, spoiled, unused, pile);
            }
        }

        if (HeldOut > pile)
        {
            throw WorkRefusals.TooManyHeldOut(HeldOut.Value, pile);
        }
    }
}
