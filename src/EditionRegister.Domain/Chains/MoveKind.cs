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

    public static MoveKind InTransit { get; } = new("in-transit", "in transit", "whereabouts", leaves: true);

    public static MoveKind AtFramer { get; } = new("at-framer", "at the framer", "whereabouts");

    public static MoveKind AtPhotographer { get; } = new("at-photographer", "at the photographer", "whereabouts");

    public static MoveKind AtConservator { get; } = new("at-conservator", "at the conservator", "whereabouts");

    public static MoveKind OnApproval { get; } = new("on-approval", "on approval", "whereabouts", leaves: true);

    public static MoveKind Lent { get; } = new("lent", "lent", "whereabouts", leaves: true);

    public static MoveKind Exhibited { get; } = new("exhibited", "exhibited", "whereabouts");

    public static MoveKind AwaitingCollection { get; } = new("awaiting-collection", "awaiting collection", "whereabouts");

    public static MoveKind Lost { get; } = new("lost", "lost", "whereabouts");

    public static MoveKind Stolen { get; } = new("stolen", "stolen", "whereabouts");

    public static MoveKind Found { get; } = new("found", "found again", "whereabouts");

    public static MoveKind Destroyed { get; } = new("destroyed", "destroyed", "whereabouts");

    public static MoveKind Given { get; } = new("given", "given", "ownership", leaves: true);

    public static MoveKind Exchanged { get; } = new("exchanged", "exchanged", "ownership", leaves: true);

    public static MoveKind Bequeathed { get; } = new("bequeathed", "bequeathed", "ownership", leaves: true);

    public static MoveKind ReturnedByBuyer { get; } = new("returned-by-buyer", "returned by the buyer", "ownership");

    /// <summary>The consignee passes it on to another consignee.</summary>
    public static MoveKind SubConsigned { get; } = new("sub-consigned", "consigned further", "whereabouts", leaves: true);

    /// <summary>A sheet left out ends so where it was worked over by hand, and the work of its own that came of it begins so.</summary>
    public static MoveKind WorkedOver { get; } = new("worked-over", "worked over by hand", "whereabouts");

    /// <summary>All kinds, in the order of the seeded table.</summary>
    public static IReadOnlyList<MoveKind> All { get; } =
    [
        Pulled, AsListed, PutAway, Consigned, Returned, Collected, Made, OwnedAsListed, Sold,
        InTransit, AtFramer, AtPhotographer, AtConservator, OnApproval, Lent, Exhibited, AwaitingCollection, Lost, Stolen, Found, Destroyed,
        Given, Exchanged, Bequeathed, ReturnedByBuyer, SubConsigned, WorkedOver,
    ];

    public string Word { get; }

    public string Name { get; }

    /// <summary>whereabouts or ownership.</summary>
    public string Chain { get; }

    public bool Leaves { get; }

    /// <summary>How a sheet came to be known; every chain begins with one of these and none goes on with it.</summary>
    public bool IsFirst => Word is "pulled" or "as-listed" or "made" or "owned-as-listed";

    /// <summary>Nobody has it, or nobody is to have it: it comes back by being found, or not at all.</summary>
    public bool IsMissing => Word is "lost" or "stolen";

    /// <summary>A sheet that went so comes back by being taken back: it is somewhere for a time.</summary>
    public bool IsForATime => Word is "in-transit" or "at-framer" or "at-photographer" or "at-conservator" or "on-approval" or "lent" or "exhibited" or "consigned" or "sub-consigned";

    /// <summary>A transfer out of the hands of the one it belonged to, for money or not.</summary>
    public bool PassesOn => this is { Chain: "ownership", Leaves: true };

    public static MoveKind? Of(string word) => All.FirstOrDefault(kind => kind.Word == word);
}
