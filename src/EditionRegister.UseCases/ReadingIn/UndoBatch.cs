using System.Globalization;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>
/// Undoes a batch, while nothing was built on it: a file that was read in, or a deed over several works. What it made is taken out again, and what
/// it changed is put back to what the logbook says stood there before. Codes stay given.
/// </summary>
public sealed class UndoBatch(RegisterStore store)
{
    // What an edition or a certificate rests on once there is one.
    private static readonly string[] RestedOn = ["standing", "numbering", "number", "signed", "signature", "pencilled", "titled"];

    /// <summary>Whether it is worth asking: what was itself an undoing, and papers that went out, are never undone.</summary>
    public static bool MayUndo(string deed) => deed is not ("undo-batch" or "take-link-back" or "issue-certificate");

    /// <summary>Answers how many impressions it was about.</summary>
    /// <exception cref="Domain.RefusedException">batch-not-found, batch-built-on or batch-not-undoable.</exception>
    public int Run(long batch) => Undo(batch).Impressions;

    /// <summary>As <see cref="Run"/>, and says what kind of batch it was.</summary>
    public BatchUndone Undo(long batch) => store.Write("undo-batch", writing =>
    {
        var kind = writing.Read.StandingBatch(batch) ?? throw ReadInRefusals.NoSuchBatch(batch);
        var traced = writing.Trace(batch);
        Undoable(batch, traced);
        NothingBuiltOn(writing, batch, traced);
        writing.StartBatch("deed");

        foreach (var row in traced.Rows.Reverse())
        {
            var deed = writing.On(RootNamed(row.Root));

            if (row.Before is null)
            {
                deed.Unset(row.Table, row.Id);
            }
            else
            {
                deed.Set(row.Table, row.Id, [.. row.Before]);
            }
        }

        writing.On(Root.Batch(batch)).Set("batch", batch, ("undone", "yes"));

        return new BatchUndone(kind == "read-in" || traced.Rows.Any(row => row is { Table: "impression", Before: null }), traced.Deed, Impressions(writing, traced).Count);
    });

    private static void Undoable(long batch, BatchTraced traced)
    {
        if (traced.TakesAway || traced.Rows.Any(row => row.IsErased))
        {
            throw ReadInRefusals.NotUndoable(batch, "it took something out of the register that it would have to bring back");
        }

        if (traced.Rows.Any(row => row.Table is "document"))
        {
            throw ReadInRefusals.NotUndoable(batch, "certificates were issued or withdrawn with it, and paper that is out stays out");
        }
    }

    private static void NothingBuiltOn(Writing writing, long batch, BatchTraced traced)
    {
        if (traced.Rows.FirstOrDefault(row => !row.IsAsLeft) is { } changed)
        {
            throw ReadInRefusals.BuiltOn(batch, Called(writing.Read, changed.Table, changed.Id));
        }

        var made = traced.Rows.Where(row => row.Before is null).Select(row => new RowName(row.Table, row.Id)).ToHashSet();

        if (writing.Read.PointedAtFromOutside(made) is { } user)
        {
            throw ReadInRefusals.BuiltOn(batch, Called(writing.Read, user.Table, user.Id));
        }

        foreach (var work in WorksOf(writing.Read, traced))
        {
            if (WentOn(work, made) is { } sheet)
            {
                throw ReadInRefusals.BuiltOn(batch, $"{sheet} has gone on");
            }

            if (traced.Rows.Any(row => row is { Table: "impression", Before: { } before } && before.Any(fact => RestedOn.Contains(fact.Fact)) && work.Impressions.Any(sheet => sheet.Id == row.Id))
                && RestsOn(work, traced.Last) is { } resting)
            {
                throw ReadInRefusals.BuiltOn(batch, resting);
            }
        }
    }

    /// <summary>A sheet one of whose steps was made by the batch and is followed by one that was not.</summary>
    private static string? WentOn(Work work, HashSet<RowName> made) => work.Impressions.FirstOrDefault(sheet =>
        sheet.Whereabouts.SkipWhile(link => !made.Contains(new RowName("whereabouts", link.Id))).Any(link => !made.Contains(new RowName("whereabouts", link.Id)))
        || sheet.Ownership.SkipWhile(link => !made.Contains(new RowName("ownership", link.Id))).Any(link => !made.Contains(new RowName("ownership", link.Id))))?.ShownCode;

    /// <summary>An edition or a certificate of the work that was written after the batch.</summary>
    private static string? RestsOn(Work work, long last) =>
        work.Editions.FirstOrDefault(edition => edition.V > last) is { } edition ? string.Create(CultureInfo.InvariantCulture, $"edition {edition.Id}")
        : work.Impressions.SelectMany(sheet => sheet.Documents).FirstOrDefault(document => document.V > last) is { } document ? $"certificate {document.Serial}"
        : null;

    private static IEnumerable<Work> WorksOf(Reader reader, BatchTraced traced) =>
        traced.Rows.Select(row => RootNamed(row.Root)).Where(root => root.Kind == "work").Select(root => root.Id).Distinct().Select(reader.Work).OfType<Work>();

    private static HashSet<long> Impressions(Writing writing, BatchTraced traced)
    {
        var ofLink = WorksOf(writing.Read, traced).SelectMany(work => work.Impressions)
            .SelectMany(sheet => sheet.Whereabouts.Select(link => (Row: new RowName("whereabouts", link.Id), Sheet: sheet.Id))
                .Concat(sheet.Ownership.Select(link => (Row: new RowName("ownership", link.Id), Sheet: sheet.Id)))
                .Concat(sheet.Reservations.Select(kept => (Row: new RowName("reservation", kept.Id), Sheet: sheet.Id)))
                .Append((Row: new RowName("impression", sheet.Id), Sheet: sheet.Id)))
            .ToDictionary(pair => pair.Row, pair => pair.Sheet);

        return [.. traced.Rows.Select(row => ofLink.GetValueOrDefault(new RowName(row.Table, row.Id))).Where(sheet => sheet != 0)];
    }

    /// <summary>A sheet by its code, what a show lists by both; anything else by its number.</summary>
    private static string Called(Reader reader, string table, long id) => table switch
    {
        "impression" when CodeOf(reader, id) is { } code => code,
        "whereabouts" or "ownership" when CodeOfStep(reader, table, id) is { } code => code,
        "show_impression" when reader.ShowListing(id) is { } listing => FormattableString.Invariant($"{CodeOf(reader, listing.Impression)} is or was on the list of show {listing.Show}"),
        _ => FormattableString.Invariant($"{table.Replace('_', ' ')} {id}"),
    };

    private static string? CodeOf(Reader reader, long sheet) =>
        reader.Works().SelectMany(work => work.Impressions).FirstOrDefault(one => one.Id == sheet)?.ShownCode;

    private static string? CodeOfStep(Reader reader, string chain, long step) => reader.Works().SelectMany(work => work.Impressions)
        .FirstOrDefault(one => chain == "whereabouts" ? one.Whereabouts.Any(link => link.Id == step) : one.Ownership.Any(link => link.Id == step))?.ShownCode;

    private static Root RootNamed(string root)
    {
        var parts = root.Split('/');

        return new Root(parts[0], long.Parse(parts[1], CultureInfo.InvariantCulture));
    }
}

/// <summary>What a batch was, and how many impressions it was about: made by it, or only changed.</summary>
public sealed record BatchUndone(bool IsMade, string Deed, int Impressions);
