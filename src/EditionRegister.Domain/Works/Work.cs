using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Pictures;
using EditionRegister.Domain.Sets;

namespace EditionRegister.Domain.Works;

/// <summary>One work whole: its people, matrices, print runs, editions and every impression, as the register stands at one moment.</summary>
public sealed record Work
{
    public required long Id { get; init; }

    public required long V { get; init; }

    public string? Title { get; init; }

    /// <summary>given, untitled or unknown.</summary>
    public required string TitleState { get; init; }

    /// <summary>named or unknown.</summary>
    public required string MakerState { get; init; }

    public required RecordedDate Year { get; init; }

    /// <summary>In words, as written.</summary>
    public string? Technique { get; init; }

    /// <summary>The techniques that were read in <see cref="Technique"/>, in their order; none where nothing was.</summary>
    public IReadOnlyList<WorkTechnique> Techniques { get; init; } = [];

    /// <summary>What was read in <see cref="Technique"/>, as a person says it: "reduction linocut; 4 colours"; null where nothing was, or the words say just that.</summary>
    public string? TechniqueRead =>
        Techniques.Count == 0 ? null
        : string.Join("; ", new[] { string.Join(", ", Techniques.Select(one => OwnWords.TechniqueOf(one.Technique)?.Name ?? one.Technique)), ColoursRead, TechniqueSupport is { } on ? $"on {on}" : null }.OfType<string>()) is var read
            && read != Technique ? read : null;

    private string? ColoursRead => TechniqueColours is { } colours ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{colours} colour{(colours == 1 ? "" : "s")}") : null;

    /// <summary>In how many colours, as was read.</summary>
    public int? TechniqueColours { get; init; }

    /// <summary>What it is printed on, as was read in the words of the technique.</summary>
    public string? TechniqueSupport { get; init; }

    public string? Note { get; init; }

    public required IReadOnlyList<WorkRole> Roles { get; init; }

    public required IReadOnlyList<Matrix> Matrices { get; init; }

    public required IReadOnlyList<PrintRun> Runs { get; init; }

    public required IReadOnlyList<Edition> Editions { get; init; }

    public required IReadOnlyList<Impression> Impressions { get; init; }

    public required AddressBook Book { get; init; }

    /// <summary>The sheet that was worked over by hand into this work, or null.</summary>
    public WorkedOver? WorkedOver { get; init; }

    /// <summary>Its parts, where the work is a set; else null.</summary>
    public PrintSet? Set { get; init; }

    public IReadOnlyList<Picture> Pictures { get; init; } = [];

    /// <summary>Kinds and faults that the register made for itself.</summary>
    public OwnWords OwnWords { get; init; } = OwnWords.None;

    /// <summary>The title as lists show it: as given, Untitled, or [unknown].</summary>
    public string ShownTitle => TitleState == "untitled" ? "Untitled" : Title ?? "[unknown]";

    /// <summary>The maker for the keeper's eyes, first named first; [unknown] where nobody knows.</summary>
    public string ShownMaker => Makers.Any() ? string.Join(", ", Makers.Select(maker => maker.FullName)) : "[unknown]";

    public IEnumerable<Person> Makers => InRole(Role.Maker.Word);

    /// <summary>The makers, and after them the estate: whose a sheet is while it has not been sold.</summary>
    public IEnumerable<Person> MakersAndEstate => Makers.Concat(InRole(Role.Estate.Word));

    /// <summary>Who has what a run gives: the maker; after the maker's death the estate, where there is one.</summary>
    public Person? FirstOwnerOf(string? posthumous) => posthumous == "yes" ? InRole(Role.Estate.Word).Concat(Makers).FirstOrDefault() : Makers.FirstOrDefault();

    public bool IsReduction => Matrices.Any(matrix => matrix.IsReduction);

    public IEnumerable<Person> InRole(string role) =>
        from held in Roles
        where held.Role == role
        orderby held.Ordinal
        let person = Book.Person(held.Person)
        where person is not null
        select person;

    public PrintRun? RunOf(Impression impression) => Runs.FirstOrDefault(run => run.Id == impression.Run);

    public Numbering? NumberingOf(Impression impression) => EditionOf(impression)?.Find(impression.Numbering);

    public Edition? EditionOf(Impression impression)
    {
        foreach (var edition in Editions)
        {
            if (edition.Find(impression.Numbering) is not null)
            {
                return edition;
            }
        }

        return null;
    }

    /// <summary>The number as the register has it: as pencilled, else as given, else that it has none or nobody knows, or its standing.</summary>
    public string NumberOf(Impression impression) =>
        impression.Pencilled
        ?? NumberingOf(impression)?.Spell(impression.Number)
        ?? (impression.Standing != "kept" ? impression.Standing.Replace('-', ' ') : impression.IsAsListed ? "number not known" : "not numbered");
}
