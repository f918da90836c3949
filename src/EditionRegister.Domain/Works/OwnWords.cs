using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Domain.Works;

/// <summary>Words that a register added to the growing lists for itself.</summary>
public sealed record OwnWords(IReadOnlyList<NumberingKind> Kinds, IReadOnlyList<Fault> Faults)
{
    /// <summary>For what can be the matter with a sheet; read only where there are condition reports.</summary>
    public IReadOnlyList<ConditionTerm> Terms { get; init; } = [];

    /// <summary>Techniques that are not in the list every register knows.</summary>
    public IReadOnlyList<Technique> Techniques { get; init; } = [];

    public static OwnWords None { get; } = new([], []);

    /// <summary>The kinds every register knows and then its own, as lists show them.</summary>
    public IReadOnlyList<NumberingKind> AllKinds { get; } = Kinds.Count == 0 ? NumberingKind.All : [.. NumberingKind.All, .. Kinds];

    /// <summary>The faults every register knows and then its own, as lists show them.</summary>
    public IReadOnlyList<Fault> AllFaults { get; } = Faults.Count == 0 ? Fault.All : [.. Fault.All, .. Faults];

    /// <summary>The techniques every register knows and then its own, as lists show them.</summary>
    public IReadOnlyList<Technique> AllTechniques => Techniques.Count == 0 ? Technique.All : [.. Technique.All, .. Techniques];

    /// <summary>The technique of that word, the register's own or one that every register knows; else null.</summary>
    public Technique? TechniqueOf(string word) => Technique.Find(word) ?? Techniques.FirstOrDefault(technique => technique.Word == word);

    /// <summary>The kind of that word, the register's own or one that every register knows; else null.</summary>
    public NumberingKind? Kind(string? word) => NumberingKind.TryFind(word, out var known) ? known : Kinds.FirstOrDefault(kind => kind.Word == word);

    /// <summary>How a term is shown: by its name, or by its word without hyphens where nobody knows it.</summary>
    public string NameOfTerm(string word) => (ConditionTerm.Of(word) ?? Terms.FirstOrDefault(term => term.Word == word))?.Name ?? word.Replace('-', ' ');

    /// <summary>The fault of that word, the register's own or one that every register knows; else null.</summary>
    public Fault? FaultOf(string? word) => Fault.Of(word) ?? Faults.FirstOrDefault(fault => fault.Word == word);
}
