using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Text;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Findings;

/// <summary>What a check of the register finds, the gravest first, each with what to do about it.</summary>
internal sealed class FindingsPage : ListPage
{
    private const int FootLines = 9;

    private static readonly ListColumn[] Columns = [new("found", 15), new("of what", 22, Stretch: 2), new("what is so", 20, Stretch: 3)];

    private readonly Desk _desk;
    private readonly Checking _checking;
    private readonly Accepting _accepting;
    private LogbookHead? _head;
    private bool _showsAccepted;
    private IReadOnlyList<Finding> _found = [];

    public FindingsPage(Desk desk)
    {
        _desk = desk;
        _checking = new Checking(desk);
        _accepting = new Accepting(desk, _checking);
    }

    public override string Title => _showsAccepted ? "Findings, accepted" : "Findings";

    public override string Explains =>
        "Here the register is held against itself: do the numbers add up, does the pencil agree with the record, do the chains of owners hold, was anything changed behind the program's back. "
        + "A contradiction (!) is two facts that cannot both be true; a query (?) is worth asking about; a note (·) is worth knowing. Nothing is changed by checking. "
        + "Below the list stands what was found, and what to do. Enter opens the page on which it is put right, and Esc there comes back. "
        + "What is as it should be, however odd it looks, can be accepted with a reason: it stays on record, is listed apart, and returns when its facts change.";

    public override Listing Rows => new(Columns, _found.Count, row => Cells(_found[row])) { ToneOf = row => FindingInWords.ToneOf(_found[row].Severity) };

    public override string Empty =>
        _checking.Last is not { } last ? (_checking.IsUnderway ? "Nothing is known yet." : "The check did not come to its end. Press c to check again.")
        : Filter.Length > 0 ? "No finding speaks of that."
        : _showsAccepted ? "No finding is accepted."
        : last.Accepted.Count > 0 ? $"Nothing to mend. {Counted.Of(last.Accepted.Count, "finding")} accepted: v shows them." : "Nothing to mend.";

    public override string? FindsIn => "title, code, rule, any word";

    public override IReadOnlyList<KeyDeed> Keys => [.. KeysOfFinding(), .. KeysOfPage()];

    /// <summary>The check that is under way beside the page.</summary>
    public Task Underway => _checking.Underway;

    public override IReadOnlyList<Line> Head(int width) => CheckedInWords.Of(_checking, _showsAccepted, width);

    public override IReadOnlyList<Line> Foot(int width)
    {
        if (Here is not { } finding)
        {
            return [];
        }

        // Always as many lines, so that the list stays where it is when the cursor moves.
        List<Line> lines = [Line.Of(new string('─', width), Tone.Quiet), .. FindingInWords.Of(finding, width)];
        lines = lines.Count > FootLines ? [.. lines.Take(FootLines - 1), Line.Of("… r reads it whole", Tone.Quiet)] : lines;

        return [.. lines, .. Enumerable.Repeat(Line.Empty, FootLines - lines.Count)];
    }

    public override async Task RefreshAsync()
    {
        _head = await _desk.Store.Do(register =>
        {
            try
            {
                return register.LookAround.Head();
            }
            catch (RefusedException)
            {
                // A check says what is the matter.
                return null;
            }
        });

        if (!_checking.IsUnderway && (_checking.Last is not { } last || last.Head != _head))
        {
            Check();
        }

        Filtered();
    }

    protected override void Filtered()
    {
        var all = (_showsAccepted ? _checking.Last?.Accepted : _checking.Last?.Open) ?? [];
        var words = SearchText.Fold(Filter).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        _found = words.Length == 0 ? all : [.. all.Where(finding => Speaks(finding, words))];
    }

    private static IReadOnlyList<string> Cells(Finding finding) => [FindingInWords.Sign(finding.Severity), finding.Subject.Name, finding.Message];

    private static bool Speaks(Finding finding, string[] words)
    {
        var folded = SearchText.Fold($"{FindingInWords.Sign(finding.Severity)} {finding.Subject.Name} {finding.Rule} {finding.Message} {finding.Handle} {finding.Accepted?.Reason}");

        return words.All(word => folded.Contains(word, StringComparison.Ordinal));
    }

    private Finding? Here => _found.Count == 0 ? null : _found[Current];

    private void Check() => _checking.Begin(Filtered);

    private IEnumerable<KeyDeed> KeysOfFinding()
    {
        if (Here is not { } finding)
        {
            yield break;
        }

        yield return new KeyDeed("Enter", finding.Handle is null ? "see what to do" : "go and mend it", () => WhereMended.OpenAsync(_desk, finding))
        {
            Explained = "Opens the sheet, edition, work or person on whose page it is put right; of the file itself a page that says what to do, step by step.",
        };

        if (finding.Accepted is not null)
        {
            yield return KeyDeed.Opens("t", "take back", () => _accepting.AskToTakeBack(finding)) with { Explained = "Takes the acceptance back, so that the finding counts again." };
        }
        else if (finding.Handle is not null)
        {
            yield return KeyDeed.Opens("a", "accept, saying why", () => _accepting.Form(finding)) with { Explained = "Accepts the finding with a reason: it stays on record, counts no more, and returns when its facts change." };
        }

        yield return KeyDeed.Opens("r", "read it whole", () => new TextPageOf("a finding", "One finding whole, with what to do about it.", width => FindingInWords.Of(finding, width)));
        yield return new KeyDeed("g", "go there", () => WhereMended.OpenAsync(_desk, finding));
    }

    private IEnumerable<KeyDeed> KeysOfPage()
    {
        if (_showsAccepted || _checking.Last is { Accepted.Count: > 0 })
        {
            yield return KeyDeed.Doing("v", _showsAccepted ? "show open ones" : "show accepted", Turn);
        }

        if (!_checking.IsUnderway)
        {
            yield return KeyDeed.Doing("c", "check again", Check) with { Explained = "Checks the whole register once more. Without it that is done when you come here and something was recorded since." };
        }
    }

    private void Turn()
    {
        _showsAccepted = !_showsAccepted;
        FilterBy("");
    }
}
