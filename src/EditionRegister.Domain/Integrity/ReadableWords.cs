using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>Words of closed and growing lists that the register does not know.</summary>
internal static class ReadableWords
{
    private static readonly string[] Whats = ["block", "plate", "stone", "screen", "stencil", "other"];
    private static readonly string[] YesNo = ["yes", "no", "unknown"];
    private static readonly string[] NumberFates = ["open", "never-printed", "void", "elsewhere", "unknown"];
    private static readonly string[] Standings = ["pulled", "kept", "spare", "left-out", "held-out"];
    private static readonly string[] ForSale = ["by-custom", "yes", "no", "unknown"];
    private static readonly string[] Sides = ["front", "back", "unknown"];
    private static readonly string[] Manners = ["written", "stamped", "embossed", "unknown"];
    private static readonly string[] Positions = ["placed", "with", "unknown", "gone"];
    private static readonly string[] Owners = ["known", "unknown"];
    private static readonly string[] Documents = ["valid", "superseded", "withdrawn"];

    private static readonly string[] MatrixFates =
        ["undecided", "cut-away-in-printing", "cancelled", "kept-uncancelled", "regrained-or-reclaimed", "cut-up", "lost", "given-away", "unknown"];

    public static IEnumerable<Unreadable> Of(Work work) =>
    [
        .. Word(work.AsSubject(), "state of the title", work.TitleState, "given", "untitled", "unknown"),
        .. Word(work.AsSubject(), "state of the maker", work.MakerState, "named", "unknown"),
        .. work.Roles.SelectMany(role => Word(work.AsSubject(), "role", role.Role, [.. Role.All.Select(known => known.Word)])),
        .. work.Roles.Select(role => work.Book.Person(role.Person)).OfType<Person>().Distinct().SelectMany(OfPerson),
        .. work.Matrices.SelectMany(matrix => OfMatrix(work.SubjectOf(matrix), matrix)),
        .. work.Runs.SelectMany(run => Word(work.SubjectOf(run), "purpose", run.Purpose, "edition", "proofing", "restrike", "unknown")),
        .. work.Editions.SelectMany(edition => OfEdition(work, edition)),
        .. work.Impressions.SelectMany(sheet => OfSheet(work, work.SubjectOf(sheet), sheet)),
    ];

    private static IEnumerable<Unreadable> OfPerson(Person person)
    {
        Subject subject = new("person", person.Id, person.FullName);

        return
        [
            .. Word(subject, "kind", person.What, "person", "organisation"),
            .. Word(subject, "protection", person.Protected, "yes", "no"),
            .. Word(subject, "public name", person.Policy, [.. PublicNamePolicy.All.Select(policy => policy.Word)]),
            .. Word(subject, "erasure", person.Erased, "yes", "no"),
        ];
    }

    private static IEnumerable<Unreadable> OfMatrix(Subject subject, Matrix matrix) =>
    [
        .. Word(subject, "kind of matrix", matrix.What, Whats),
        .. Word(subject, "reduction", matrix.Reduction, YesNo),
        .. Word(subject, "fate", matrix.Fate, MatrixFates),
    ];

    private static IEnumerable<Unreadable> OfEdition(Work work, Editions.Edition edition) =>
    [
        .. Word(work.SubjectOf(edition), "kind of edition", edition.Kind, "limited", "open", "varied", "unique", "unknown"),
        .. Word(work.SubjectOf(edition), "extent", edition.Extent, "whole", "partly-known", "someone-elses"),
        .. Word(work.SubjectOf(edition), "closed", edition.Closed, YesNo),
        .. edition.Printing is null ? [] : Word(work.SubjectOf(edition), "manner of printing", edition.Printing, Editions.NewEdition.Printings),
        .. edition.Rank is null ? [] : Word(work.SubjectOf(edition), "rank", edition.Rank, Editions.NewEdition.Ranks),
        .. edition.FellShort is null ? [] : Word(work.SubjectOf(edition), "how it fell short", edition.FellShort, "reset", "disclosed"),
        .. edition.Numberings.SelectMany(numbering => OfNumbering(work.SubjectOf(edition, numbering), numbering)),
    ];

    private static IEnumerable<Unreadable> OfNumbering(Subject subject, Editions.Numbering numbering) =>
    [
        .. Word(subject, "kind of numbering", numbering.KindWord, [.. NumberingKind.All.Select(kind => kind.Word), .. numbering.Kind is { IsOwn: true } own ? (string[])[own.Word] : []]),
        .. Word(subject, "notation", numbering.NotationWord, [.. Notation.All.Select(notation => notation.Word)]),
        .. Word(subject, "state of the size", numbering.SizeState, "stated", "open", "unknown"),
        .. numbering.Numbers
            .Where(number => !NumberFates.Contains(number.Fate))
            .SelectMany(number => Word(subject, $"fate of {numbering.Spelled(number.Ordinal)}", number.Fate, NumberFates)),
    ];

    private static IEnumerable<Unreadable> OfSheet(Work work, Subject subject, Impression sheet) =>
    [
        .. Word(subject, "standing", sheet.Standing, Standings),
        .. sheet.Fault is null ? [] : work.OwnWords.FaultOf(sheet.Fault) is not null ? [] : Word(subject, "fault", sheet.Fault, [.. Fault.All.Select(fault => fault.Word)]),
        .. Word(subject, "signed", sheet.Signed, YesNo),
        .. Word(subject, "for sale", sheet.ForSale, ForSale),
        .. sheet.Inscriptions.SelectMany(inscription => Word(subject, "side of an inscription", inscription.Side, Sides)),
        .. sheet.Inscriptions.SelectMany(inscription => Word(subject, "manner of an inscription", inscription.Manner, Manners)),
        .. sheet.Whereabouts.SelectMany(link => Move(subject, link.Kind, "whereabouts").Concat(Word(subject, "position", link.To.State, Positions))),
        .. sheet.Ownership.SelectMany(link => Move(subject, link.Kind, "ownership").Concat(Word(subject, "owner", link.To.State, Owners))),
        .. sheet.Documents.SelectMany(document => OfDocument(subject, document)),
    ];

    private static IEnumerable<Unreadable> OfDocument(Subject subject, IssuedDocument document) =>
    [
        .. Word(subject, document.Serial.Length == 0 ? "standing of a document" : $"standing of {document.Serial}", document.Standing, Documents),
        .. Given(subject, "serial of a document", document.Serial),
        .. Given(subject, "kind of a document", document.Kind),
    ];

    private static IEnumerable<Unreadable> Move(Subject subject, string word, string chain) =>
        MoveKind.Of(word)?.Chain == chain ? []
        : word.Length == 0 ? [new Unreadable(subject, $"The kind of a link in the {chain} of {subject} is missing.")]
        : [new Unreadable(subject, $"A link in the {chain} of {subject} is of the kind “{word}”, which the register does not know.")];

    private static IEnumerable<Unreadable> Word(Subject subject, string what, string word, params IReadOnlyList<string> known) =>
        known.Contains(word) ? []
        : word.Length == 0 ? [new Unreadable(subject, $"{Capital(what)} of {subject} is missing.")]
        : [new Unreadable(subject, $"{Capital(what)} of {subject} is “{word}”, which is none of {InWords.List(known)}.")];

    /// <summary>A word of no closed list: any will do, but none is damage.</summary>
    private static IEnumerable<Unreadable> Given(Subject subject, string what, string word) =>
        word.Length == 0 ? [new Unreadable(subject, $"{Capital(what)} of {subject} is missing.")] : [];

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
