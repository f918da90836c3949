using System.Diagnostics.CodeAnalysis;

namespace EditionRegister.Domain.Numbers;

/// <summary>What a run of numbers is for. Each numbering counts from one on its own and never mixes with another.</summary>
public sealed record NumberingKind
{
    private NumberingKind(string word, string mark, string name, Counts counts)
    {
        Word = word;
        Mark = mark;
        Name = name;
        InSize = counts == Counts.AsTheEdition;
        InTotal = counts != Counts.AsSheetsPulled;
        ForSale = counts is Counts.AsTheEdition or Counts.AsProofForSale;
    }

    private NumberingKind(string word, string mark, string name, bool inSize, bool inTotal, bool forSale)
    {
        Word = word;
        Mark = mark;
        Name = name;
        InSize = inSize;
        InTotal = inTotal;
        ForSale = forSale;
        IsOwn = true;
    }

    private enum Counts
    {
        AsTheEdition,
        AsProofForSale,
        AsProofNotForSale,
        AsSheetsPulled,
    }

    public static NumberingKind Numbered { get; } = new("numbered", "", "numbered edition", Counts.AsTheEdition);

    // Marks: A/P, H.C., B.A.T. and C/P after the Tamarind definitions, P/P, T/P and C.T.P. after workshop glossaries.
    // Where no mark is settled in the trade the words themselves are pencilled; S/P means two things and is never written.
    public static NumberingKind ArtistsProof { get; } = new("artists-proof", "A/P", "artist's proof", Counts.AsProofForSale);

    public static NumberingKind PrintersProof { get; } = new("printers-proof", "P/P", "printer's proof", Counts.AsProofForSale);

    public static NumberingKind PublishersProof { get; } = new("publishers-proof", "publisher's proof", "publisher's proof", Counts.AsProofForSale);

    public static NumberingKind HorsCommerce { get; } = new("hors-commerce", "H.C.", "hors commerce", Counts.AsProofNotForSale);

    public static NumberingKind BonATirer { get; } = new("bon-a-tirer", "B.A.T.", "bon à tirer", Counts.AsProofNotForSale);

    public static NumberingKind Trial { get; } = new("trial", "T/P", "trial proof", Counts.AsSheetsPulled);

    public static NumberingKind State { get; } = new("state", "state proof", "state proof", Counts.AsSheetsPulled);

    public static NumberingKind Progressive { get; } = new("progressive", "progressive proof", "progressive proof", Counts.AsSheetsPulled);

    public static NumberingKind ColourTrial { get; } = new("colour-trial", "C.T.P.", "colour trial proof", Counts.AsSheetsPulled);

    public static NumberingKind Cancellation { get; } = new("cancellation", "C/P", "cancellation proof", Counts.AsProofNotForSale);

    public static NumberingKind Presentation { get; } = new("presentation", "presentation proof", "presentation proof", Counts.AsProofNotForSale);

    public static NumberingKind Workshop { get; } = new("workshop", "workshop proof", "workshop proof", Counts.AsProofNotForSale);

    public static NumberingKind Archive { get; } = new("archive", "archive proof", "archive proof", Counts.AsProofNotForSale);

    public static NumberingKind Exchange { get; } = new("exchange", "exchange proof", "exchange proof", Counts.AsProofNotForSale);

    public static NumberingKind LegalDeposit { get; } = new("legal-deposit", "legal deposit", "legal deposit", Counts.AsProofNotForSale);

    /// <summary>The kinds the register knows from the start, in the order lists show them.</summary>
    public static IReadOnlyList<NumberingKind> All { get; } =
    [
        Numbered, ArtistsProof, PrintersProof, PublishersProof, HorsCommerce, BonATirer, Trial, State, Progressive,
        ColourTrial, Cancellation, Presentation, Workshop, Archive, Exchange, LegalDeposit,
    ];

    /// <summary>A kind that a register made for itself.</summary>
    public static NumberingKind Own(string word, string mark, string name, bool inSize, bool inTotal, bool forSale) => new(word, mark, name, inSize, inTotal, forSale);

    /// <summary>Permanent, in kebab case: what the register, commands and CSV call it.</summary>
    public string Word { get; }

    /// <summary>As pencilled before the number; empty for the edition itself.</summary>
    public string Mark { get; }

    /// <summary>In words, for screens and documents.</summary>
    public string Name { get; }

    /// <summary>Counts in the edition size.</summary>
    public bool InSize { get; }

    /// <summary>Counts in the total of impressions; what does not is told apart as sheets pulled.</summary>
    public bool InTotal { get; }

    /// <summary>Sold by custom of the trade; a register may decide otherwise for one sheet.</summary>
    public bool ForSale { get; }

    /// <summary>Made by a register for itself; the others every register knows from the start.</summary>
    public bool IsOwn { get; }

    public static bool TryFind(string? word, [NotNullWhen(true)] out NumberingKind? value)
    {
        value = All.FirstOrDefault(kind => string.Equals(kind.Word, word, StringComparison.Ordinal));

        return value is not null;
    }

    public override string ToString() => Word;
}
