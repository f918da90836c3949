namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>A technique of printmaking: its word, its name, and how people write it. A register adds its own by word and name.</summary>
/// <param name="Word">Permanent, in kebab case.</param>
/// <param name="Name">As screens show it.</param>
public sealed record Technique(string Word, string Name)
{
    /// <summary>
    /// The id in the Getty Art &amp; Architecture Thesaurus, checked by its label against a published mapping (american-art/ima at 8d1014e,
    /// AAT-Term-Mappings at 821b571); empty where none was. Several public mappings are wrong, so none is taken without its label.
    /// </summary>
    public string Aat { get; init; } = "";

    public TechniqueFamily Family { get; init; } = TechniqueFamily.Other;

    /// <summary>How people write it beside its word and its name, with accents. A ~ before one says that it is a technique only in the company of another.</summary>
    public IReadOnlyList<string> Writings { get; init; } = [];

    public static IReadOnlyList<Technique> All { get; } =
    [
        .. ReliefTechniques.All, .. IntaglioTechniques.All, .. PlanographicTechniques.All, .. StencilTechniques.All, .. MonoTechniques.All,
        .. DigitalTechniques.All, .. BesideTechniques.All, .. OtherTechniques.All,
    ];

    /// <summary>The technique of a word that is stored.</summary>
    public static Technique? Find(string word) => All.FirstOrDefault(technique => technique.Word == word);

    public override string ToString() => Name;
}
