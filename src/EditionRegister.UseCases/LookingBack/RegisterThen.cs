using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;
using EditionRegister.Formats.Csv;
using EditionRegister.Store;
using EditionRegister.Store.Logbook;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Documents;
using EditionRegister.UseCases.Inventory;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.LookingBack;

/// <summary>
/// The register as its logbook had it at the end of a day, read-only, with what today's register knows of that day beside it where the two differ.
/// What was erased since is in neither.
/// </summary>
public sealed class RegisterThen : IDisposable
{
    private const string NowKnown = "now known";

    private readonly PastRegister _past;
    private readonly KnownNow _known;

    internal RegisterThen(RegisterStore now, PastRegister past) => (_past, _known) = (past, new KnownNow(now, past));

    public DateOnly Day => _past.Day;

    /// <summary>The last entry that had been made by then.</summary>
    public RecordedEntry Last => _past.Last;

    /// <summary>Looks at it as at any other register.</summary>
    public LookAround LookAround => new(_past.Store);

    public void Dispose() => _past.Dispose();

    /// <exception cref="Domain.RefusedException">edition-not-found: there was none of that number then.</exception>
    public MapThen Map(long edition)
    {
        var (work, found) = LookAround.Edition(edition);

        return new MapThen(work, NumberMap.Of(work, found), Differences(work.Id));
    }

    /// <summary>One impression with the certificate that stood valid for it, as it was frozen; null where none did.</summary>
    /// <exception cref="Domain.RefusedException">code-misread or code-not-found.</exception>
    public ImpressionThen Impression(string code)
    {
        var seen = LookAround.Impression(code);
        var certificate = seen.Impression.ValidCertificate is null
            ? null
            : new PreviewStandingCertificates(_past.Store).Run(ImpressionChoice.OfCode(seen.Impression.ShownCode))[0];

        return new ImpressionThen(seen, certificate, Differences(seen.Work.Id).FirstOrDefault(one => one.Code == seen.Impression.ShownCode));
    }

    /// <summary>A list as it would have read, with what is now known of the sheets on its page, and of sheets of the same works that were not on record then.</summary>
    /// <exception cref="Domain.RefusedException">place-not-found or place-ambiguous.</exception>
    public (ImpressionsListed Listed, IReadOnlyList<KnownDifference> Differences) List(ImpressionsWanted wanted)
    {
        var listed = new ListImpressions(_past.Store).Run(wanted);
        var codes = listed.Page.Select(one => one.Impression.ShownCode).ToHashSet(StringComparer.Ordinal);
        var isNarrowed = wanted.Texts.Count > 0 || wanted.Maker is not null || wanted.Place is not null || wanted.Standing is not null || wanted.Edition is not null || wanted.Work is not null;
        var differences = isNarrowed ? listed.Page.Select(one => one.Work.Id).Distinct().SelectMany(Differences) : Differences(null);

        return (listed, [.. differences.Where(one => one.Then is null || codes.Contains(one.Code))]);
    }

    /// <summary>The inventory as it would have been written, with a last column that says what is now known otherwise.</summary>
    /// <exception cref="Domain.RefusedException">nothing-to-list, person-not-found, place-not-found, or the impressions chosen cannot be found.</exception>
    public InventoryPreview Inventory(InventoryChoice choice)
    {
        var then = new PreviewInventory(_past.Store).Run(choice);
        var known = Differences(null).ToDictionary(one => one.Code, StringComparer.Ordinal);

        return new InventoryPreview([.. then.Columns, NowKnown], [.. then.Rows.Select(row => (IReadOnlyList<string?>)[.. row, known.GetValueOrDefault(row[0]!)?.Now])]);
    }

    /// <summary>The same as CSV (RFC 4180); answers how many impressions were listed.</summary>
    /// <exception cref="Domain.RefusedException">nothing-to-list, person-not-found, place-not-found, or the impressions chosen cannot be found.</exception>
    public int ExportInventory(InventoryChoice choice, Stream stream)
    {
        var (columns, rows) = Inventory(choice);
        CsvFile.Write(stream, columns, rows);

        return rows.Count;
    }

    /// <summary>To a file, beside it first and then renamed.</summary>
    /// <exception cref="Domain.RefusedException">As above, or output-not-written.</exception>
    public int ExportInventory(InventoryChoice choice, string path)
    {
        var count = 0;
        Output.Write(path, stream => count = ExportInventory(choice, stream));

        return count;
    }

    /// <summary>An insurance schedule as it would have read, and as today's register has it for that day.</summary>
    /// <exception cref="Domain.RefusedException">person-not-found, person-ambiguous, place-not-found, place-ambiguous.</exception>
    public ScheduleThen Schedule(ScheduleChoice choice)
    {
        var wanted = _known.Wanted(choice);

        var (then, now) = (_past.Store.Read(reader => wanted.Of(reader.Works(), reader.Book)), _known.Schedule(wanted));
        var listed = then.Lines.Concat(now.Lines).Select(line => line.Sheet.ShownCode).ToHashSet(StringComparer.Ordinal);

        return new ScheduleThen(then, now, [.. Differences(null).Where(one => listed.Contains(one.Code))]);
    }

    private IReadOnlyList<KnownDifference> Differences(long work) => Differences((long?)work);

    private IReadOnlyList<KnownDifference> Differences(long? work) =>
        _past.Store.Read(reader => _known.Differences(work is { } id ? (reader.Work(id) is { } one ? [one] : []) : reader.Works(), work));
}

/// <summary>The map of an edition as it stood.</summary>
public sealed record MapThen(Work Work, NumberMap Map, IReadOnlyList<KnownDifference> Differences);

/// <summary>An impression as it stood.</summary>
public sealed record ImpressionThen(ImpressionSeen Seen, CertificatePreview? Certificate, KnownDifference? Difference);
