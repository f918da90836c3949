namespace EditionRegister.Domain.Impressions;

/// <summary>Why a sheet was left out. Faults of hand printing by their common names; common practice, no source.</summary>
public sealed record Fault(string Word, string Name)
{
    public static IReadOnlyList<Fault> All { get; } =
    [
        new("misregistration", "misregistration"), new("slur", "slur"), new("smudge", "smudge"), new("set-off", "set-off"),
        new("under-inked", "under-inked"), new("filled-in", "filled in"), new("uneven", "uneven"), new("crease", "crease"),
        new("tear", "tear"), new("fingerprint", "fingerprint"), new("stain", "stain"), new("foul-biting", "foul biting"),
        new("lint", "lint"), new("set-askew", "set askew"), new("wrong-paper", "wrong paper"), new("other", "another fault"),
    ];

    public static Fault? Of(string? word) => All.FirstOrDefault(fault => fault.Word == word);
}
