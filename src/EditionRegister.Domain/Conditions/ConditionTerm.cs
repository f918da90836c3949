namespace EditionRegister.Domain.Conditions;

/// <summary>A word of paper conservation for what is the matter with a sheet. Terms in general use, meanings from memory; common practice, no source.</summary>
/// <param name="Word">Permanent, in kebab case.</param>
/// <param name="Name">As screens and reports show it.</param>
/// <param name="Meaning">What one sees, for someone who has not met the word; empty for a register's own.</param>
public sealed record ConditionTerm(string Word, string Name, string Meaning)
{
    /// <summary>The paper's colour, then its plane, what is broken or missing, what is on it, the ink, and what was done to it.</summary>
    public static IReadOnlyList<ConditionTerm> All { get; } =
    [
        new("foxing", "foxing", "small rust-brown spots in the paper, single or in swarms"),
        new("toning", "toning", "paper yellowed or browned all over, the edges often more"),
        new("light-staining", "light staining", "paper darkened or bleached where light fell through the window of a mat"),
        new("mat-burn", "mat burn", "a brown line along the window or the edge of an acid mat"),
        new("staining", "staining", "a spot or patch of another colour"),
        new("tide-line", "tide line", "a wavy brown edge where water came to a stop and dried"),
        new("mould", "mould", "fuzzy or powdery growth, or the coloured spots it leaves"),
        new("cockling", "cockling", "the sheet lies in soft waves, from damp or from being held down at the edges"),
        new("buckling", "buckling", "the sheet bulges out of its plane in one place"),
        new("curling", "curling", "the sheet rolls up by itself"),
        new("handling-crease", "handling crease", "a soft crescent-shaped crease from being picked up with one hand"),
        new("hard-crease", "hard crease", "a sharp line where the fibres or the ink broke"),
        new("fold", "fold", "the sheet was folded over, and shows it"),
        new("dented-corner", "dented corner", "a corner knocked soft, bent or crushed"),
        new("dent", "dent", "a hollow or a scratch without colour, from something hard"),
        new("tear", "tear", "paper torn in from the edge or in the sheet, nothing missing"),
        new("hole", "hole", "paper gone right through"),
        new("pinhole", "pinhole", "the small round hole of a pin"),
        new("insect-damage", "insect damage", "holes with eaten edges, grazed surface, or specks left by insects"),
        new("loss", "loss", "a piece of the sheet is missing"),
        new("skinning", "skinning", "the top of the paper came away where something stuck to it was pulled off"),
        new("thinning", "thinning", "the paper is thin in one place, seen against the light"),
        new("delamination", "delamination", "layers coming apart, chine collé from its support for one"),
        new("abrasion", "abrasion", "ink or paper rubbed, rough or shiny"),
        new("surface-dirt", "surface dirt", "dust, smears or fingermarks that lie on the surface"),
        new("accretion", "accretion", "something that stuck to the surface: a drop, a fibre, a speck of wax"),
        new("set-off", "set-off", "ink of another sheet on this one"),
        new("fading", "fading", "a colour paler than it was"),
        new("bleeding", "bleeding", "ink, a stamp or a signature has run"),
        new("flaking", "flaking", "ink that lifts off or has lifted off"),
        new("hinge-residue", "hinge residue", "paste, tape or paper left of an old hinge"),
        new("adhesive-staining", "adhesive staining", "a stain where tape or glue is or was"),
        new("trimmed", "trimmed", "the sheet was cut down; not a fault of the printing, and its size is less than the run's"),
        new("repaired", "repaired", "a repair that was made before"),
        new("backed", "backed", "laid down on other paper, linen or board"),
        new("other", "something else", "what no other word says; the note tells"),
    ];

    /// <summary>What to do at once about what spreads or harms; null where there is nothing of the kind.</summary>
    public string? Care => Word switch
    {
        "mould" => "Mould spreads and harms lungs: put the sheet apart from all others, touch it only with gloves and a mask, and ask a conservator.",
        "insect-damage" => "Insects move on: put the sheet apart, look at what lay beside it, and ask a conservator.",
        _ => null,
    };

    public static ConditionTerm? Of(string? word) => All.FirstOrDefault(term => term.Word == word);
}
