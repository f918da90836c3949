using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Logbook;

/// <summary>Says whether the logbook is whole, and where it is not, where and what to do.</summary>
internal static class ProofInWords
{
    public static IEnumerable<Line> Of(Proving proving, long all, int width) =>
        proving.Refused is { } refused ? Wrap.Of($"! The logbook could not be read to its end. {refused}", width).Select(line => Line.Of(line, Tone.Bad))
        : proving.Proof is not { } proof ? [Line.Of($"Checking that nothing was changed or is missing… {Counted.Figure(proving.Done)} of {Counted.Of(all, "entry", "entries")}", Tone.Quiet)]
        : proof is { BrokenAt: { } at } ? Broken(at, proof.How ?? "does not fit", proving.Backup, width)
        : [Unbroken($"Unbroken from 1 to {Counted.Figure(proof.Entries)}", proof.Head.Head, width)];

    private static Line Unbroken(string upTo, string head, int width) =>
        Line.Of(upTo, Tone.Good).Then($", head {HeadShown.Begun(head, width - upTo.Length - ", head ".Length)}");

    private static IEnumerable<Line> Broken(long at, string how, string? backup, int width)
    {
        var sound = at > 1 ? $" Entries 1 to {Counted.Figure(at - 1)} are sound." : "";
        var copy = backup is null
            ? "There is no copy in the backups folder: look for one on other disks"
            : $"The newest copy is {backup}: open it in a folder of its own";

        return
        [
            .. Wrap.Of($"! The logbook is broken: entry {Counted.Figure(at)} {how}.{sound}", width).Select(line => Line.Of(line, Tone.Bad)),
            .. Wrap.Of($"Record nothing more here, and keep this file as it is. {copy}, see whether its logbook is unbroken, and go on from there. `edreg check` lists everything that was changed.", width).Select(line => (Line)line),
        ];
    }
}
