namespace EditionRegister.Domain.Chains;

/// <summary>What a move or a transfer is called. A sheet that leaves is out of the maker's hands: from then on its edition never grows.</summary>
public sealed record MoveKind
{
    private MoveKind(string word, string name, string chain, bool leaves = false) => (Word, Name, Chain, Leaves) = (word, name, chain, leaves);

    public static MoveKind Pulled { get; } = new("pulled", "pulled from the press", "whereabouts");

    public static MoveKind AsListed { get; } = new("as-listed", "as found in a list", "whereabouts");

    public static MoveKind PutAway { get; } = new("put-away", "put away", "whereabouts");

    public static MoveKind Consigned { get; } = new("consigned", "consigned", "whereabouts", leaves: true);

    public static MoveKind Returned { get; } = new("returned", "returned", "whereabouts");

    public static MoveKind Collected { get; } = new("collected", "handed to its owner", "whereabouts", leaves: true);

    public static MoveKind Made { get; } = new("made", "made", "ownership");

    public static MoveKind OwnedAsListed { get; } = new("owned-as-listed", "owned as found in a list", "ownership");

    public static MoveKind Sold { get; } = new("sold", "sold", "ownership", leaves: true);

    /// <summary>All kinds, in the order of the seeded table; those after <see cref="Sold"/> wait for their deeds.</summary>
    public static IReadOnlyList<MoveKind> All { get; } =
    [
        Pulled, AsListed, PutAway, Consigned, Returned, Collected, Made, OwnedAsListed, Sold,
        new("in-transit", "in transit", "whereabouts", leaves: true),
        new("at-framer", "at the framer", "whereabouts"),
        new("at-photographer", "at the photographer", "whereabouts"),
        new("at-conservator", "at the conservator", "whereabouts"),
        new("on-approval", "on approval", "whereabouts", leaves: true),
        new("lent", "lent", "whereabouts", leaves: true),
        new("exhibited", "exhibited", "whereabouts"),
        new("awaiting-collection", "awaiting collection", "whereabouts"),
        new("lost", "lost", "whereabouts"),
        new("stolen", "stolen", "whereabouts"),
        new("found", "found again", "whereabouts"),
        new("destroyed", "destroyed", "whereabouts"),
        new("given", "given", "ownership", leaves: true),
        new("exchanged", "exchanged", "ownership", leaves: true),
        new("bequeathed", "bequeathed", "ownership", leaves: true),
        new("returned-by-buyer", "returned by the buyer", "ownership"),
    ];

    public string Word { get; }

    public string Name { get; }

    /// <summary>whereabouts or ownership.</summary>
    public string Chain { get; }

    public bool Leaves { get; }

    public static MoveKind? Of(string word) => All.FirstOrDefault(kind => kind.Word == word);
}
