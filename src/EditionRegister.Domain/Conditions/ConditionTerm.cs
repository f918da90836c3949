namespace EditionRegister.Domain.Conditions;

/// <summary>A word of paper conservation for what is the matter with a sheet. Terms in general use, meanings from memory; common practice, no source.</summary>
/// <param name="Word">Permanent, in kebab case.</param>
/// <param name="Name">As screens and reports show it.</param>
/// <param name="Meaning">What one sees, for someone who has not met the word.</param>
public sealed record ConditionTerm(string Word, string Name, string Meaning)
{
    public static IReadOnlyList<ConditionTerm> All { get; } =
    [
        new("foxing", "foxing", "small rust-brown spots in the paper"),
        new("toning", "toning", "paper darkened all over, often where light reached it"),
        new("mat-burn", "mat burn", "a brown line or edge left by an acid mat"),
        new("light-staining", "light staining", "paper darkened inside the window of the mat"),
        new("fading", "fading", "ink or colour paler than it was"),
        new("staining", "staining", "a spot or tide of another colour"),
        new("tide-line", "tide line", "the edge where water once stopped"),
        new("mould", "mould", "growth or its stains; keep it apart from other sheets"),
        new("cockling", "cockling", "the sheet lies in waves"),
        new("buckling", "buckling", "the sheet is bent out of its plane"),
        new("handling-crease", "handling crease", "a soft crease from being picked up"),
        new("hard-crease", "hard crease", "a sharp fold that broke the surface"),
        new("dented-corner", "dented corner", "a corner knocked or bent"),
        new("tear", "tear", "a tear at the edge or in the sheet"),
        new("hole", "hole", "a hole, insects' or a pin's"),
        new("loss", "loss", "a piece of the sheet is missing"),
        new("skinning", "skinning", "the surface came away where something was pulled off"),
        new("thinning", "thinning", "the paper is thinner in one place"),
        new("abrasion", "abrasion", "ink or paper rubbed"),
        new("hinge-residue", "hinge residue", "paste, tape or paper of an old hinge"),
        new("adhesive-staining", "adhesive staining", "a stain from tape or glue"),
        new("trimmed", "trimmed", "the sheet was cut down"),
        new("surface-dirt", "surface dirt", "dust or fingermarks on the surface"),
        new("set-off", "set-off", "ink of another sheet on this one"),
        new("repaired", "repaired", "an old repair"),
        new("backed", "backed", "laid down on another paper or board"),
        new("other", "something else", "as the note says"),
    ];

    public static ConditionTerm? Of(string? word) => All.FirstOrDefault(term => term.Word == word);
}
