using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Bench;

/// <summary>What is asked before an edition is declared; saving it opens the rehearsal and writes nothing.</summary>
internal static class DeclareForm
{
    private const string Numberings = "Numberings";
    private const string Kind = "Kind of edition";
    private const string Extent = "Whose, how far known";
    private const string Intended = "Intended";
    private const string Declared = "Declared on";
    private const string Rank = "Which edition";
    private const string Printing = "Printing";
    private const string NotSaid = "not said";
    private const string Statement = "Edition in words";
    private const string Note = "Note";

    private static readonly (string Word, string Shown)[] Extents = [("whole", "ours, wholly here"), ("partly-known", "ours, partly known"), ("someone-elses", "someone else's")];

    private static readonly (string? Word, string Shown)[] Ranks =
        [(null, NotSaid), ("first", "the first"), ("later", "a later one"), ("restrike", "a restrike"), ("posthumous", "posthumous")];

    private static readonly (string? Word, string Shown)[] Printings = [(null, NotSaid), ("at-once", "at once"), ("on-demand", "on demand")];

    public static Form New(Desk desk, Work work)
    {
        var kept = work.Impressions.Count(sheet => sheet.IsKept && sheet.Numbering is null);
        var unsorted = work.Impressions.Count(sheet => sheet.Standing == "pulled");

        return new Form($"Declare an edition of {Called.Work(work)}", [
            new Field(Numberings, kept > 0 ? $"1-{Counted.Figure(kept)}" : "")
            {
                IsNeeded = true,
                Form = "such as 1-12, deluxe: I-X, A/P I-II, B.A.T. – or 12 – or open – or edition of 75 plus 10 artist's proofs",
                Wrong = typed => Fields.Refused(() => Plans(typed, work.OwnWords)),
                Reads = typed => Fields.Refused(() => Plans(typed, work.OwnWords)) is null ? Plans(typed, work.OwnWords).Stated?.Words?.InWords(work.OwnWords) : null,
            },
            Field.OneOf(Kind, ["limited", "open", "varied", "unique", "unknown"]),
            Field.OneOf(Extent, [.. Extents.Select(extent => extent.Shown)]),
            Fields.Count(Intended, least: 1),
            Fields.Today(Declared, desk.Today),
            Field.OneOf(Printing, [.. Printings.Select(one => one.Shown)]),
            Field.OneOf(Rank, [.. Ranks.Select(one => one.Shown)]),
            Fields.Statement(Statement, work.OwnWords),
            new Field(Note),
        ], form => RehearseAsync(desk, work, form))
        {
            Name = "Declare an edition",
            About =
            [
                $"{Counted.Of(kept, "kept sheet")} without a number{(unsorted > 0 ? $"; {Counted.Of(unsorted, "pull")} not sorted yet" : "")}. Saving shows what would be declared, and writes nothing yet.",
            ],
            OwnEachTime = [Numberings, Intended, Declared, Rank, Statement, Note],
            Caution = "After the first sheet is signed or has left, the size never grows again.",
        };
    }

    private static async Task<Saved> RehearseAsync(Desk desk, Work work, Form form)
    {
        var said = Plans(form[Numberings]!, work.OwnWords);
        NewEdition plan = new()
        {
            Numberings = said.Plans,
            Statement = form[Statement] ?? (said.Stated is null ? null : form[Numberings]),
            Kind = form[Kind]!,
            Extent = Extents.First(extent => extent.Shown == form[Extent]).Word,
            Intended = Fields.Whole(form[Intended]),
            Declared = Fields.DateOf(form[Declared]) ?? RecordedDate.None,
            Printing = Printings.First(one => one.Shown == form[Printing]).Word,
            Rank = Ranks.First(one => one.Shown == form[Rank]).Word,
            Note = form[Note],
        };
        // What would be refused is refused here already, in the same words, while everything typed still stands.
        await desk.Store.Do(register => register.RehearseDeclaration.Run(work.Id, plan));

        return new Saved("Nothing is written yet.", new RehearsalPage(desk, work.Id, plan, form));
    }

    /// <summary>Numberings parted by commas, or in words; a number alone is the size of the edition itself.</summary>
    private static NumberingPlans Plans(string typed, OwnWords own) => NumberingPlans.Read(
        string.Join(", ", typed.Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(part => part.All(char.IsAsciiDigit) ? $"1-{part}" : part)), own);
}
