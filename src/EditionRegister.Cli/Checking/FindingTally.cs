using System.Text.Json;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Integrity;
using EditionRegister.UseCases.Checking;

namespace EditionRegister.Cli;

/// <summary>Counts findings as they pass, and says at the end what they come to.</summary>
internal sealed class FindingTally
{
    private const string LogbookRule = "LogbookIsUnbroken";

    private int _queries;
    private int _notes;
    private int _accepted;
    private bool _logbookIsBroken;
    private bool _fileIsDamaged;

    /// <summary>Those that were not accepted.</summary>
    public int Contradictions { get; private set; }

    /// <summary>The handle of the first finding that could be accepted, or null.</summary>
    public string? Acceptable { get; private set; }

    /// <summary>What was accepted is counted as that and as nothing else.</summary>
    public Finding Count(Finding finding)
    {
        if (finding.Accepted is not null)
        {
            _accepted++;

            return finding;
        }

        Acceptable ??= finding.Handle;
        Contradictions += finding.Severity == Severity.Contradiction ? 1 : 0;
        _queries += finding.Severity == Severity.Query ? 1 : 0;
        _notes += finding.Severity == Severity.Note ? 1 : 0;
        _logbookIsBroken |= finding.Rule == LogbookRule;
        _fileIsDamaged |= finding.Rule == ReadableFindings.Rule;

        return finding;
    }

    /// <summary>Always said, also when all is well.</summary>
    /// <param name="head">The logbook as it stands; null where it cannot be read.</param>
    public string LastLine(LogbookHead? head) =>
        $"{(Contradictions == 0 ? "Nothing to mend" : "Something to mend")}: {Counted.Of(Contradictions, "contradiction")}, {Counted.Of(_queries, "query", "queries")}, {Counted.Of(_notes, "note")}{(_accepted > 0 ? $"; {Counted.Figure(_accepted)} accepted" : "")}; "
        + (_logbookIsBroken ? "the logbook is broken."
            : head is { } known && !_fileIsDamaged ? $"the logbook is unbroken from 1 to {Counted.Figure(known.N)}, head {known.Head}."
            : "the file is damaged, so its logbook is not to be relied on.");

    public void Write(Utf8JsonWriter json, LogbookHead? head)
    {
        json.WriteNumber("contradictions", Contradictions);
        json.WriteNumber("queries", _queries);
        json.WriteNumber("notes", _notes);
        json.WriteNumber("accepted", _accepted);
        json.WriteStartObject("logbook");
        json.WriteBoolean("unbroken", !_logbookIsBroken && !_fileIsDamaged && head is not null);
        json.Whole("n", head?.N);
        json.WriteString("head", head?.Head);
        json.WriteEndObject();
    }
}
