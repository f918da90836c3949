using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Passes;

/// <summary>What is said of a pass; null leaves a fact of a recorded pass as it is, and a list that is given takes the place of the one before.</summary>
public sealed record PassWords
{
    /// <summary>One of <see cref="PassKinds.All"/>.</summary>
    public string? Kind { get; init; }

    public string? Name { get; init; }

    /// <summary>One of <see cref="PassKinds.Sides"/>.</summary>
    public string? Side { get; init; }

    /// <summary>all or some.</summary>
    public string? Reach { get; init; }

    public RecordedDate? Done { get; init; }

    public int? SheetsIn { get; init; }

    public int? Added { get; init; }

    public int? SheetsOut { get; init; }

    public int? Spoiled { get; init; }

    public int? HeldOut { get; init; }

    /// <summary>Sheets of other paper used to get ready; they count in nothing.</summary>
    public int? MakeReady { get; init; }

    public string? Note { get; init; }

    public IReadOnlyList<(Matrix Matrix, MatrixState? State)>? Matrices { get; init; }

    public IReadOnlyList<(string Colour, string? Ink)>? Colours { get; init; }

    /// <summary>One of <see cref="PassKinds.Manners"/>: of all its colours.</summary>
    public string? Manner { get; init; }

    /// <summary>Who did it.</summary>
    public IReadOnlyList<long>? People { get; init; }

    public IReadOnlyList<(string Word, int Sheets)>? SpoiledBy { get; init; }

    public IReadOnlyList<(string Word, int Sheets)>? HeldOutAs { get; init; }

    /// <summary>The sheets that went through, where only some did.</summary>
    public IReadOnlyList<Impression>? Sheets { get; init; }

    /// <summary>Sheets of the pile that were held out after this pass.</summary>
    public IReadOnlyList<Impression>? Proofs { get; init; }

    /// <summary>The facts of the pass itself that are said, with what they are to be; a date as it is written.</summary>
    public IEnumerable<(string Fact, FactValue Value)> Changes() => new (string Fact, FactValue Value)[]
    {
        ("kind", Kind), ("name", Name), ("side", Side), ("reach", Reach), ("done", Done?.Text), ("sheets_in", SheetsIn), ("added", Added), ("sheets_out", SheetsOut),
        ("spoiled", Spoiled), ("held_out", HeldOut), ("make_ready", MakeReady), ("note", Note),
    }.Where(change => !change.Value.IsNull);

    /// <summary>The pass as it will stand: a recorded one with these words, or a new one.</summary>
    internal Pass On(Pass before, long? atHand, SheetsCut cut)
    {
        var reach = Reach ?? (Sheets is { Count: > 0 } ? "some" : before.Reach);
        var spoiledBy = SpoiledBy?.Select(one => new PassCount(0, one.Word, one.Sheets)).ToList() ?? before.SpoiledBy;
        var heldOutAs = HeldOutAs?.Select(one => new PassCount(0, one.Word, one.Sheets)).ToList() ?? before.HeldOutAs;
        var counts = PassBalance.Completed(
            new PassCounts(
                SheetsIn ?? (Sheets is { Count: > 0 } && cut.IsOneToOne ? Sheets.Count : before.SheetsIn),
                Added ?? before.Added,
                SheetsOut ?? before.SheetsOut,
                Spoiled ?? (SpoiledBy is null ? before.Spoiled : Sum(spoiledBy)),
                HeldOut ?? (HeldOutAs is not null ? Sum(heldOutAs) : before.HeldOut ?? (cut.IsOneToOne ? Proofs?.Count : null))),
            atHand,
            reach != "some");

        return before with
        {
            Kind = Kind ?? before.Kind,
            Name = Name ?? before.Name,
            Side = Side ?? before.Side,
            Reach = reach,
            Done = Done ?? before.Done,
            SheetsIn = counts.In,
            Added = counts.Added,
            SheetsOut = counts.Out,
            Spoiled = counts.Spoiled,
            HeldOut = counts.HeldOut,
            MakeReady = MakeReady ?? before.MakeReady,
            Note = Note ?? before.Note,
            Matrices = Matrices?.Select(used => new PassMatrix(0, used.Matrix.Id, used.State?.Id)).ToList() ?? before.Matrices,
            Colours = Coloured(before.Colours),
            People = People?.Select(person => new PassPerson(0, person)).ToList() ?? before.People,
            SpoiledBy = spoiledBy,
            HeldOutAs = heldOutAs,
            Sheets = Sheets?.Select(sheet => new PassSheet(0, sheet.Id)).ToList() ?? before.Sheets,
        };
    }

    private List<PassColour> Coloured(IReadOnlyList<PassColour> before)
    {
        var colours = Colours ?? before.Select(colour => (colour.Colour, colour.Ink)).ToList();
        var manner = Manner ?? (Colours is null && before is [var first, ..] ? first.Manner : colours.Count == 1 ? "flat" : "unknown");

        return [.. colours.Select((colour, at) => new PassColour(0, at + 1, colour.Colour, colour.Ink, manner))];
    }

    // Nothing named is nothing counted.
    private static int? Sum(IReadOnlyList<PassCount> counts) => counts.Count == 0 ? null : counts.Sum(one => one.Sheets);
}
