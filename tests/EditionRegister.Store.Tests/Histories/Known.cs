namespace EditionRegister.Store.Tests.Histories;

/// <summary>What a generated history has made so far, as far as the next deed must know it to be a lawful one.</summary>
internal sealed class Known
{
    public List<KnownPerson> People { get; } = [];

    public List<long> Places { get; } = [];

    public List<KnownWork> Works { get; } = [];

    public List<KnownEdition> Editions { get; } = [];

    public List<KnownSheet> Sheets { get; } = [];

    public List<KnownShow> Shows { get; } = [];

    public List<long> Acceptances { get; } = [];

    public List<KnownBatch> Batches { get; } = [];

    public List<(string Word, bool InSize)> Kinds { get; } = [("numbered", true), ("artists-proof", false), ("trial", false)];

    public List<string> Roles { get; } = ["maker", "printer", "workshop"];

    public List<string> Techniques { get; } = ["etching", "aquatint", "linocut"];

    public List<string> Faults { get; } = ["slur", "crease"];

    public List<(string Word, bool Leaves)> Moves { get; } = [("put-away", false), ("consigned", true), ("returned", false), ("lent", true)];

    public List<string> Terms { get; } = ["foxing", "tear"];

    public List<(KnownSheet Sheet, long Id)> Reservations { get; } = [];

    public List<(long Work, long Id)> Pictures { get; } = [];

    public HashSet<KnownSheet> InACopy { get; } = [];

    public IEnumerable<KnownSheet> Here => Sheets.Where(sheet => !sheet.Gone);

    public IEnumerable<KnownPerson> Standing => People.Where(person => !person.Erased);
}

internal sealed class KnownPerson(long id)
{
    public long Id { get; } = id;

    public bool Erased { get; set; }
}

internal sealed class KnownWork(long id)
{
    public long Id { get; } = id;

    public HashSet<(string Role, long Person)> Roles { get; } = [];

    public HashSet<string> Techniques { get; } = [];

    public List<long> RoleRows { get; } = [];

    public List<long> Matrices { get; } = [];

    public List<KnownRun> Runs { get; } = [];

    public int Editions { get; set; }

    /// <summary>The states of each of its matrices.</summary>
    public Dictionary<long, List<long>> States { get; } = [];

    public int Pictures { get; set; }

    public bool IsSet { get; set; }
}

internal sealed class KnownPass(long id, KnownRun run, int? sheetsOut)
{
    public long Id { get; } = id;

    public KnownRun Run { get; } = run;

    /// <summary>How many sheets it gave, where all went through it and somebody counted.</summary>
    public int? Out { get; } = sheetsOut;
}

internal sealed class KnownRun(long id, long work)
{
    public long Id { get; } = id;

    public long Work { get; } = work;

    public int Sheets { get; set; }

    public List<KnownPass> Passes { get; } = [];
}

internal sealed class KnownEdition(long id, long work, bool whole)
{
    public long Id { get; } = id;

    public long Work { get; } = work;

    public bool Whole { get; } = whole;

    /// <summary>Signed or left: from then on it never grows.</summary>
    public bool Frozen { get; set; }

    public List<KnownNumbering> Numberings { get; } = [];
}

internal sealed class KnownNumbering(long id, KnownEdition edition, bool inSize)
{
    public long Id { get; } = id;

    public KnownEdition Edition { get; } = edition;

    public bool InSize { get; } = inSize;

    public int? Size { get; set; }

    public List<KnownNumber> Numbers { get; } = [];

    /// <summary>How many numbers are agreed to be somebody's.</summary>
    public int Entitled { get; set; }
}

internal sealed class KnownNumber(long id, int ordinal)
{
    public long Id { get; } = id;

    public int Ordinal { get; } = ordinal;

    public bool Open { get; set; } = true;
}

internal sealed class KnownSheet(long id, long work)
{
    public long Id { get; } = id;

    public long Work { get; } = work;

    public string Standing { get; set; } = "pulled";

    public bool Gone { get; set; }

    /// <summary>Another row speaks of it, so that undoing what made it would leave that row without it.</summary>
    public bool Named { get; set; }

    public bool Numbered { get; set; }

    public bool SignedOrLeft { get; set; }

    public KnownEdition? Edition { get; set; }

    public List<KnownLink> Whereabouts { get; } = [];

    public List<KnownLink> Ownership { get; } = [];

    public List<long> Inscriptions { get; } = [];

    public int Inscribed { get; set; }

    /// <summary>Rows of who did what, with the inscription that says so.</summary>
    public List<(long Inscription, long Role)> LetteredRows { get; } = [];

    public List<long> Kept { get; } = [];

    public List<long> Documents { get; } = [];

    public long? Certificate { get; set; }

    public long? Grade { get; set; }

    public HashSet<string> Links { get; } = [];

    public int Changes { get; set; }

    public int Reports { get; set; }

    public bool Reserved { get; set; }
}

internal sealed class KnownShow(long id)
{
    public long Id { get; } = id;

    public Dictionary<KnownSheet, long> Rows { get; } = [];
}

internal sealed record KnownLink(long Id, string State, long? First, long? Second);

internal sealed class KnownBatch(long id)
{
    public long Id { get; } = id;

    public List<KnownSheet> Sheets { get; } = [];

    public bool Undone { get; set; }
}
